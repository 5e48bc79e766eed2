package org.trammel.calc.geometry;

/**
 * Where the axes of the front triangle's tubes meet head tube and seat tube, along those tubes' axes.
 *
 * @param topTubeAtHead_mm below the top of the head tube
 * @param downTubeAtHead_mm above the bottom of the head tube
 * @param topTubeAtSeat_mm below the top of the seat tube
 */
public record JointPlaces(double topTubeAtHead_mm, double downTubeAtHead_mm, double topTubeAtSeat_mm) {}
