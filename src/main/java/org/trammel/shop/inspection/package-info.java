/**
 * Readings: raw values as read, the value they reduce to, and the verdict by a stated rule; and the cold-set that may
 * put a frame straight while its window is open.
 *
 * <p>Invariants: a reading is only added to, a correction names the one it replaces; the verdict and what follows from
 * it are written in the same transaction; the deciding reading is the newest valid one.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Inspection",
        allowedDependencies = {"travellers", "gauges", "routes"})
package org.trammel.shop.inspection;
