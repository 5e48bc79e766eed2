/**
 * The alignment table: raw figures of a frame as they are read, kept one by one in whatever order they come; deviations
 * reduced from them with their uncertainty, and given to be judged in one act.
 *
 * <p>Invariants: a raw figure is only added to, a correction names the one it replaces; what was read before a frame was
 * bent is never reduced after it; a deviation is given with the budget it was computed with and with every raw figure it
 * came from, in the transaction of its verdict; no verdict is formed or shown before.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "The alignment table",
        allowedDependencies = {"travellers", "inspection", "gauges", "designs", "routes", "drift"})
package org.trammel.shop.alignment;
