/**
 * Where work is done: the stations with their limits and hours, their jigs, and the tablets and desks that acts come
 * from.
 *
 * <p>Invariants: a device keeps its name for ever, because the log names it; a tablet becomes that device by a code
 * that is typed once; only hashes of tokens and codes are stored.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Stations",
        allowedDependencies = {"records", "settings"})
package org.trammel.shop.stations;
