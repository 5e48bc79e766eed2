package org.trammel.calc.thermal;

/**
 * What one rule says.
 *
 * @param judged its verdict
 * @param words one sentence with the figures and the limit
 */
public record Finding(Judged judged, String words) {}
