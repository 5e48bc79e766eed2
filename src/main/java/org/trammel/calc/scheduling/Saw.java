package org.trammel.calc.scheduling;

/**
 * How it is cut.
 *
 * @param kerf_mm what each cut takes
 * @param keepFrom_mm shortest remnant that goes back to the rack
 */
public record Saw(double kerf_mm, double keepFrom_mm) {}
