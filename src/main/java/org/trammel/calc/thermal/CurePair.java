package org.trammel.calc.thermal;

/**
 * Minutes at a metal temperature that cure a powder or paint in full, as its sheet prints them.
 *
 * @param degC of the metal
 * @param minutes at it
 */
public record CurePair(double degC, double minutes) {}
