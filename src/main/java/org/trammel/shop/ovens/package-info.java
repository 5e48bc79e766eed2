/**
 * Ovens and what is done in them: the register with surveys and accuracy tests, programmes as revisions, loads, the record
 * of a run and what it is worth, and the heat a frame has seen.
 *
 * <p>Invariants: nothing is loaded into an oven whose survey or accuracy test is due, missing or failed; an approved
 * programme is never changed; a load is what two people signed, each for themselves; a run is judged by its record alone,
 * never by the clock; a frame passes no operation that a programme guards before its run is released;
 * whether a run is in doubt is asked of whoever traces it back ({@link org.trammel.shop.ovens.RunDoubts}).
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Ovens",
        allowedDependencies = {"travellers", "routes", "orders", "inspection", "gauges", "nonconformance"})
package org.trammel.shop.ovens;
