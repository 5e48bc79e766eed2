/**
 * What hands do at the bench that a tick alone does not prove: which brush, cloth and cleaner touched the metal, whether the
 * metal was warm and dry before the arc, that the serial struck into it is the serial of the frame.
 *
 * <p>Invariants: a tool belongs to one family of metals for good; a tool of another family, and a cleaner that turns into
 * poison gas at the arc, are never taken; metal on which water breaks into drops is cleaned again before the film counts; a
 * serial is read back only by somebody who did not strike it, who keys it whole and is not shown it, and what was misread
 * stays on record. What was recorded is only added
 * to, and the newest stands. Limits told from coupons take the place of the route's only when a frame is released.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Handwork",
        allowedDependencies = {"travellers", "gauges", "dew", "materials", "designs", "routes"})
package org.trammel.shop.handwork;
