/**
 * Drift of jigs: deviations of every frame that was set up in a jig, axis by axis, before anything was set straight;
 * control charts of them over a base that was frozen, and the call for somebody to check the jig.
 *
 * <p>Invariants: what was read after a cold-set of its frame never counts; limits come from what the jig did in its base,
 * never from the tolerance; a base and what came from before this program are only added to; an alarm calls once.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Drift of jigs",
        allowedDependencies = {"travellers", "inspection"})
package org.trammel.shop.drift;
