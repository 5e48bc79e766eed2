/**
 * The shop's route for each metal and kind of frame: operations, steps, characteristics and clocks, as revisions that
 * the QA lead edits and releases.
 *
 * <p>Invariants: a draft can be changed, a released or superseded revision never; a route has one draft and one
 * released revision at most; what is released has passed every check made before release. A route gives each
 * characteristic's id, operation, gauge, rule, signers and tolerance; a design gives the nominals of one frame.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Routes",
        allowedDependencies = {"records", "settings", "stations", "people", "web"})
package org.trammel.shop.routes;
