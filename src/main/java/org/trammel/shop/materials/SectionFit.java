package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.designs.TubePlace;

/** How the section of a tube lies to the one that the drawing asks for. */
enum SectionFit {
    /** The drawing's own figures. */
    SAME,
    /** Others, all within the tolerance: somebody decides. */
    NEAR,
    /** Nobody stated what lies in the lot: somebody looks and decides. */
    UNDECIDED,
    /** Another tube. */
    OTHER;

    /** What the drawing leaves open is the same. */
    static SectionFit of(TubePlace asked, @Nullable Section has, BigDecimal outside_mm, BigDecimal wall_mm) {
        if (asked.outside_mm() == null) {
            return SAME;
        }
        if (has == null) {
            return asked.fitting() ? UNDECIDED : OTHER;
        }
        SectionFit outside = of(asked.outside_mm(), has.outside_mm(), outside_mm);
        Section drawn = Section.of(asked.outside_mm(), asked.wall_mm(), asked.middle_mm(), asked.other_mm());
        if (drawn == null) {
            return outside;
        }
        List<BigDecimal> walls = has.walls();
        SectionFit asItLies = walls(drawn.walls(), walls, wall_mm);
        // a butted tube can be turned
        SectionFit turned = walls.size() == 1
                ? asItLies
                : walls(drawn.walls(), List.of(walls.get(2), walls.get(1), walls.get(0)), wall_mm);
        return worse(outside, asItLies.compareTo(turned) <= 0 ? asItLies : turned);
    }

    /** The section of a lot that lies nearest to what is asked for. */
    static Optional<Section> nearest(
            TubePlace asked, List<Section> sections, BigDecimal outside_mm, BigDecimal wall_mm) {
        return sections.stream().min(Comparator.comparing(section -> of(asked, section, outside_mm, wall_mm)));
    }

    private static SectionFit walls(List<BigDecimal> asked, List<BigDecimal> has, BigDecimal tolerance) {
        if (asked.size() != has.size()) {
            return OTHER;
        }
        SectionFit worst = SAME;
        for (int i = 0; i < asked.size(); i++) {
            worst = worse(worst, of(asked.get(i), has.get(i), tolerance));
        }
        return worst;
    }

    private static SectionFit of(BigDecimal asked, BigDecimal has, BigDecimal tolerance) {
        BigDecimal off = asked.subtract(has).abs();
        return off.signum() == 0 ? SAME : off.compareTo(tolerance) <= 0 ? NEAR : OTHER;
    }

    private static SectionFit worse(SectionFit one, SectionFit other) {
        return one.compareTo(other) >= 0 ? one : other;
    }
}
