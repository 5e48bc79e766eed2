/**
 * What was told again after a thermocouple of an oven failed its accuracy test: every run it was in since it was last found
 * right, what became doubtful of the frames in them, and what came of each.
 *
 * <p>Invariants: a failed test, its trace, its holds and what becomes undecided are one act; nothing gets better by being told
 * again; a frame whose run is in doubt stays as it is only where QA lead and owner agree who had no hand in it, and what the
 * run gave is undecided until then; a trace is closed once every frame has its result. Ovens ask for doubts by an interface of
 * their own and know nothing of this module.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Back-traces",
        allowedDependencies = {"travellers", "orders", "ovens"})
package org.trammel.shop.backtraces;
