/**
 * One frame, or a part of one, through its frozen steps: ticks, signatures, clocks, holds, gates, split and join.
 *
 * <p>Invariants: a released traveller keeps the route and the characteristic list it was released with; an operation
 * begins only when the one before it is done; it is done only when every step is ticked, every characteristic is
 * conforming or released by concession, no hold covers it and every signature it asks for is there, none of them by
 * somebody who did the work. All verbs on one frame run one after the other: they hold the lock of its chain.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Travellers",
        allowedDependencies = {"orders", "designs", "routes"})
package org.trammel.shop.travellers;
