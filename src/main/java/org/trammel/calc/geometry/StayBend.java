package org.trammel.calc.geometry;

/**
 * A bend asked for in a stay, as the corner its straight parts would meet in.
 *
 * @param along_mm from the stay's front end, along the straight line to its rear end
 * @param outward_mm off that line to the outside, in the plane across the side view; below 0 inward
 * @param radius_mm of the bent axis
 */
public record StayBend(double along_mm, double outward_mm, double radius_mm) {}
