/**
 * What the shop has decided for itself: values with a unit, a source and a history.
 *
 * <p>Invariants: a value is never changed, a newer one comes into force beside it; every value names its source; a
 * value lies inside what its definition allows.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Settings",
        allowedDependencies = {"records"})
package org.trammel.shop.settings;
