package org.trammel.calc.thermal;

/**
 * A logger's file as it was read.
 *
 * @param samples what it says
 * @param how how it was read
 */
public record ReadLog(Samples samples, HowRead how) {}
