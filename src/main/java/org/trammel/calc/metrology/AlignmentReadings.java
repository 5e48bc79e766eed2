package org.trammel.calc.metrology;

/** Readings of a frame's alignment, in one of two forms. Raw figures only: what follows from them is computed anew. */
public sealed interface AlignmentReadings permits PlateReadings, PointReadings {}
