package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.geometry.FrameTube;
import org.trammel.shop.routes.Kinds;

/**
 * Every place of a frame that a tube goes to. Which there are follows from the kind of frame, so that a drawing whose
 * numbers are typed has them too; what goes there follows from the drawing as far as it says.
 */
@Service
public class TubePlaces {

    private final DesignRevisionRepository revisions;

    TubePlaces(DesignRevisionRepository revisions) {
        this.revisions = revisions;
    }

    /**
     * In the order in which they are issued.
     *
     * @param revisionId drawing of the frame; null for a frame without one
     * @param kind of the frame, or of the part of it
     */
    @Transactional(readOnly = true)
    public List<TubePlace> of(@Nullable Long revisionId, String kind) {
        Map<GeometryInput, BigDecimal> drawn = new EnumMap<>(GeometryInput.class);
        if (revisionId != null) {
            revisions
                    .inputs(List.of(revisionId))
                    .forEach(row -> drawn.put((GeometryInput) row[1], Nominal.plain((BigDecimal) row[2])));
        }
        return switch (kind) {
            case Kinds.SWING_ARM -> arm(drawn);
            case Kinds.FRONT_TRIANGLE -> front(drawn);
            case Kinds.TANDEM -> tandem(drawn);
            default ->
                Stream.concat(front(drawn).stream(), stays(drawn).stream()).toList();
        };
    }

    private static List<TubePlace> front(Map<GeometryInput, BigDecimal> drawn) {
        return List.of(
                tube(drawn, FrameTube.DOWN_TUBE),
                tube(drawn, FrameTube.TOP_TUBE),
                tube(drawn, FrameTube.SEAT_TUBE),
                fitting(drawn, "HEAD_TUBE", "head tube", GeometryInput.HEAD_TUBE_OUTSIDE),
                fitting(drawn, "SHELL", "shell", GeometryInput.SHELL_OUTSIDE));
    }

    private static List<TubePlace> stays(Map<GeometryInput, BigDecimal> drawn) {
        List<TubePlace> both = new ArrayList<>(sides(drawn, FrameTube.CHAINSTAY));
        both.addAll(sides(drawn, FrameTube.SEATSTAY));
        return both;
    }

    /** An arm that is drawn without upper members is made of its two sides. */
    private static List<TubePlace> arm(Map<GeometryInput, BigDecimal> drawn) {
        return drawn.containsKey(GeometryInput.PIVOT_AHEAD) && !drawn.containsKey(GeometryInput.SEATSTAY_OUTSIDE)
                ? sides(drawn, FrameTube.CHAINSTAY)
                : stays(drawn);
    }

    /** The drawing of a tandem gives the sections of one set of main tubes; the others are not drawn. */
    private static List<TubePlace> tandem(Map<GeometryInput, BigDecimal> drawn) {
        List<TubePlace> all = new ArrayList<>(front(drawn));
        all.add(undrawn("REAR_TOP_TUBE", "rear top tube", false));
        all.add(undrawn("REAR_SEAT_TUBE", "rear seat tube", false));
        all.add(undrawn("BOOM_TUBE", "boom tube", false));
        all.add(undrawn("REAR_SHELL", "rear shell", true));
        all.addAll(stays(drawn));
        return all;
    }

    private static TubePlace undrawn(String code, String called, boolean fitting) {
        return new TubePlace(code, called, fitting, null, null, null, null);
    }

    private static TubePlace fitting(
            Map<GeometryInput, BigDecimal> drawn, String code, String called, GeometryInput outside) {
        return new TubePlace(code, called, true, drawn.get(outside), null, null, null);
    }

    private static TubePlace tube(Map<GeometryInput, BigDecimal> drawn, FrameTube tube) {
        return tube(drawn, tube, tube.name(), tube.word());
    }

    private static List<TubePlace> sides(Map<GeometryInput, BigDecimal> drawn, FrameTube tube) {
        return List.of(
                tube(drawn, tube, tube.name() + "-D", "drive-side " + tube.word()),
                tube(drawn, tube, tube.name() + "-N", "non-drive-side " + tube.word()));
    }

    private static TubePlace tube(Map<GeometryInput, BigDecimal> drawn, FrameTube tube, String code, String called) {
        TubeWalls walls = TubeWalls.of(tube);
        BigDecimal middle = drawn.get(walls.middle());
        return new TubePlace(
                code,
                called,
                false,
                drawn.get(walls.outside()),
                drawn.get(walls.wall()),
                middle,
                middle == null ? null : drawn.get(walls.wallTwo()));
    }
}
