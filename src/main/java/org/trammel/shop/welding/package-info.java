/**
 * Welding and brazing: the procedures a shop welds by, what was recorded of every node of a frame, how its welds looked, and
 * the guard of the operations in which they are made.
 *
 * <p>Invariants: a procedure in force is never changed, only superseded; what was recorded is only added to, and the newest of
 * a node stands; no arc is struck on a node before filler, gas, welder, purge and the heat of the last node are as the
 * procedure asks; a node that does not conform opens a nonconformance in the same transaction, and its operation stays shut; a
 * crack conforms to nothing; a node that a look found wanting, or that was cut open, is welded again; what was measured by a
 * meter found wrong holds its frame in the same act; no limit that was only remembered is shown as one of a standard.
 */
@org.jspecify.annotations.NullMarked
@org.springframework.modulith.ApplicationModule(
        displayName = "Welding",
        allowedDependencies = {"travellers", "gauges", "materials", "nonconformance", "designs", "routes"})
package org.trammel.shop.welding;
