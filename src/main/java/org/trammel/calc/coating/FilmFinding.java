package org.trammel.calc.coating;

/**
 * What one part of a rule says.
 *
 * @param conforming whether it is met
 * @param words one sentence with the figures and the limit
 */
public record FilmFinding(boolean conforming, String words) {}
