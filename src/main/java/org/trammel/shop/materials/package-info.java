/**
 * Material from its certificate to its place in a frame: what a lot went into, what a frame is made of.
 *
 * <p>Invariants: a lot that is quarantined, blocked, used up or past its date goes into no frame, nor does one that
 * does not fit the frame's metal; a use stays on record, scrapped or not; a remnant has one lot, the one it came from.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Materials",
        allowedDependencies = {"records", "settings", "people", "web", "travellers", "designs", "routes"})
package org.trammel.shop.materials;
