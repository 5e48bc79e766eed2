/**
 * The cold store, in which the clocks of a quenched frame stand still.
 *
 * <p>Invariants: a clock stands still only where it was measured to be cold enough, as the frame went in and as it came out;
 * what was moved is only added to.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Cold store",
        allowedDependencies = {"travellers", "gauges"})
package org.trammel.shop.coldstore;
