/**
 * Readings: raw values as read, the value they reduce to, and the verdict by a stated rule; and the cold-set that may
 * put a frame straight while its window is open. What was read with a gauge that was found wrong is judged again over the
 * whole span of its possible error.
 *
 * <p>Invariants: a reading is only added to, a correction names the one it replaces; the verdict and what follows from
 * it are written in the same transaction; the deciding reading is the newest valid one; a reading is cleared only where
 * its verdict is the same at every value it may truly have been; a frame that is not cleared and not measured again stays
 * as it is only where QA lead and owner agree.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Inspection",
        allowedDependencies = {"travellers", "gauges", "routes", "orders", "designs"})
package org.trammel.shop.inspection;
