/**
 * What every tube of a frame measures after saw and mitre, beside what its own drawing asks of it, and the hole saws that
 * cut it.
 *
 * <p>Invariants: a tube is compared with the cut list of this frame's own drawing, never with another's; no saw cuts that is
 * worn, was not measured in time, or is smaller than the mate
 * by its mark, or by its teeth than the mate less what a saw may be worn; all eight places of an end are kept and the worst is judged by
 * the limits of the route; an operation that is recorded here passes its gate when every piece is recorded, and none lies beyond what is allowed
 * that no characteristic judges. What was recorded is only added to, and the newest of a piece stands.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Cuts",
        allowedDependencies = {"travellers", "gauges", "materials", "designs", "inspection", "nonconformance", "routes"
        })
package org.trammel.shop.cuts;
