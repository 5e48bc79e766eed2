/**
 * Drift of jigs: deviations of every frame that was set up in a jig, axis by axis, before anything was set straight;
 * control charts of them by jig, welder or tube set over a base that was frozen, the call for somebody to check the jig,
 * what a shift hangs on, and how what the shop does fits between the limits.
 *
 * <p>Invariants: what was read after a cold-set of its frame never counts; limits come from what the jig did in its base,
 * never from the tolerance; a welder is named to the QA lead
 * alone; a base and what came from before this program are only added to; an alarm calls once.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Drift of jigs",
        allowedDependencies = {"travellers", "inspection", "materials"})
package org.trammel.shop.drift;
