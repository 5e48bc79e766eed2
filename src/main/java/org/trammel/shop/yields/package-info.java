/**
 * Yields: what the gates let through at the first attempt, all of them together, and what it costs to put the rest right.
 *
 * <p>Invariants: nothing is kept here, each figure is reckoned from the record when it is asked for; a share is never shown
 * without its interval; nobody is named.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Yields",
        allowedDependencies = {"travellers", "inspection", "nonconformance"})
package org.trammel.shop.yields;
