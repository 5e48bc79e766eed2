package org.trammel.calc.geometry;

/**
 * The directions at an end of a tube by which the stations of its cut are counted.
 *
 * @param along into the tube, away from its mate
 * @param towards across the tube, to the side φ = 0 that faces the mate's arm
 * @param across across the tube, to the side φ = 90°; seen from outside with the cut end up it lies to the right of φ = 0
 */
record EndFrame(SpacePoint along, SpacePoint towards, SpacePoint across) {

    /** For directions that are not parallel. */
    static EndFrame of(SpacePoint along, SpacePoint mate) {
        SpacePoint towards = mate.minus(along.times(mate.dot(along))).unit();
        return new EndFrame(along, towards, towards.cross(along));
    }

    /** The φ of the side that a direction points to. */
    double stationOf_rad(SpacePoint direction, Section tube) {
        return tube.outline().parameterOf_rad(Math.atan2(direction.dot(across), direction.dot(towards)));
    }
}
