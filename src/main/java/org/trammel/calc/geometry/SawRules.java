package org.trammel.calc.geometry;

import java.util.List;

/**
 * What a shop cuts by. All of it common practice and the shop's own choice, none of it a standard's.
 *
 * @param holeSaws_mm diameters of the hole saws at hand, in any order
 * @param oversize_mm how much larger than its mate a saw may be
 * @param shallowest_rad below this angle to the mate a hole saw wanders and grabs
 * @param thinWall_mm up to this wall one template serves outside and bore
 * @param trim_mm left on a blank beyond each mitred end
 * @param buttAtWeld_mm length of a butt that stays thick behind the weld
 */
public record SawRules(
        List<Double> holeSaws_mm,
        double oversize_mm,
        double shallowest_rad,
        double thinWall_mm,
        double trim_mm,
        double buttAtWeld_mm) {

    public SawRules {
        holeSaws_mm = List.copyOf(holeSaws_mm);
    }

    /** 0,2 mm oversize, 25°, walls up to 3 mm, 3 mm of trim, 60 mm of butt. */
    public static SawRules usual(List<Double> holeSaws_mm) {
        return new SawRules(holeSaws_mm, 0.2, Math.toRadians(25), 3, 3, 60);
    }

    Objections check() {
        Objections objections = new Objections()
                .lengthOrNone("oversize", "oversize of a hole saw", oversize_mm)
                .lengthOrNone("thinWall", "wall that one template serves", thinWall_mm)
                .lengthOrNone("trim", "trim of a mitred end", trim_mm)
                .lengthOrNone("buttAtWeld", "butt behind the weld", buttAtWeld_mm)
                .unless(
                        shallowest_rad >= 0 && shallowest_rad <= Math.PI / 2,
                        "shallowest",
                        () -> "The shallowest angle of " + Objections.shownDegrees(shallowest_rad)
                                + " is not between 0° and 90°.");
        holeSaws_mm.forEach(saw -> objections.length("holeSaws", "hole saw", saw));
        return objections;
    }
}
