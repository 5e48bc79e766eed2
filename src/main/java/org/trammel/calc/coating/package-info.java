/**
 * What the layers on a frame are judged by: thickness of the film by the rule of the route, which gauge fits which metal,
 * cross-cut, gloss and colour.
 *
 * <p>Invariants: thicknesses are exact decimals in micrometres and judged as they were read; every verdict has its reasons in
 * words; what cannot be judged is an answer without a value.
 */
@org.jspecify.annotations.NullMarked
package org.trammel.calc.coating;
