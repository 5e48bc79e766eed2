/**
 * Ovens and what is done in them: the register with surveys and accuracy tests, programmes as revisions, loads, the record
 * of a run and what it is worth, the heat a frame has seen, and the cold store in which its clocks stand still.
 *
 * <p>Invariants: nothing is loaded into an oven whose survey or accuracy test is due, missing or failed; an approved
 * programme is never changed; a load is what two people signed, each for themselves; a run is judged by its record alone,
 * never by the clock; a frame passes no operation that a programme guards before its run is released; a frame whose run is
 * in doubt stays as it is only where QA lead and owner agree who had no hand in it, and what the run gave is undecided
 * until then; a clock stands still only where it was measured to be cold enough, as the frame went in and as it came out.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Ovens",
        allowedDependencies = {"travellers", "routes", "orders", "inspection", "gauges", "nonconformance"})
package org.trammel.shop.ovens;
