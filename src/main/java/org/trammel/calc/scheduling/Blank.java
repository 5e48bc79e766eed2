package org.trammel.calc.scheduling;

/**
 * A piece of plain-gauge tube to be cut. Butted tubes are no blanks: their length is given, only their ends are trimmed.
 *
 * @param name of the tube, such as "seat tube"
 * @param frame its serial; blanks of one frame are kept to one lot where that costs no material
 * @param kind what it is cut from
 * @param length_mm as sawn
 * @param urgency lower is cut sooner
 */
public record Blank(String name, String frame, TubeKind kind, double length_mm, int urgency) {}
