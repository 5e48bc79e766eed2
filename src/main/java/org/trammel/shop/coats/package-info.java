/**
 * Surface and coat: what a finish asks of the frames it is for, what was recorded of their surface and coat, and the guard
 * of the operations in which they are blasted and sprayed.
 *
 * <p>Invariants: a finish in force is never changed, only superseded; what was recorded is only added to, and the newest
 * stands; the margin over the dew point is computed at the metal, never keyed; no step that cannot be undone opens a coat
 * before metal, powder and earth were measured for it and are as the finish asks; film of a second colour lies before that is
 * sprayed and is drawn off within its time, or not at all; a coat whose film or look does not conform
 * opens a nonconformance in the same transaction, and its operation stays shut; where an order names its colours, only a lot
 * of the colour it names for a coat is put on, and what is found of a lot later holds each frame that bears it.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Surface and coat",
        allowedDependencies = {
            "travellers",
            "orders",
            "gauges",
            "dew",
            "materials",
            "nonconformance",
            "routes",
            "inspection",
            "ovens"
        })
package org.trammel.shop.coats;
