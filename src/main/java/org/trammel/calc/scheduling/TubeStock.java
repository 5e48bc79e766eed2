package org.trammel.calc.scheduling;

/**
 * Bars or remnants alike on the rack.
 *
 * @param kind what they are
 * @param lot they came in; what is left of them keeps it
 * @param length_mm of each
 * @param count how many of them
 * @param remnant whether they are left over from bars cut before: used up before a new bar is
 */
public record TubeStock(TubeKind kind, String lot, double length_mm, int count, boolean remnant) {}
