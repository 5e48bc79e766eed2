package org.trammel.shop.designs;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.Caution;
import org.trammel.calc.geometry.Clearance;
import org.trammel.calc.geometry.Clearances;
import org.trammel.calc.geometry.CutList;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.TubeAxes;
import org.trammel.calc.units.Answer;

/**
 * What the inputs of a revision say to a check of the design gate. The people at the gate answer it; these are the
 * figures they answer by. The limits are the shop's rules as the checks word them, common practice and no standard's,
 * but for the pedal's distance to the front tyre, 100 mm without foot retention (ISO 4210-2).
 */
final class GateFigures {

    private static final double CLOSES_WITHIN_MM = 1;
    private static final double TYRE_MM = 6;
    private static final double PEDAL_MM = 100;
    private static final double CRANK_MM = 170;
    private static final double TOES_MM = 8;
    private static final double EDGE_MM = 4;
    private static final double RIDER_AHEAD_MM = 20;

    /** A figure of a check, in mm; margin and verdict are null where it has no limit. */
    record Figure(
            String label,
            double value_mm,
            @Nullable Double margin_mm,
            @Nullable Boolean met) {

        static Figure of(String label, Clearance clearance) {
            return clearance.margin().isEmpty()
                    ? new Figure(label, clearance.value_mm(), null, null)
                    : new Figure(label, clearance.value_mm(), clearance.margin().getAsDouble(), clearance.isMet());
        }

        static Figure atLeast(String label, double value_mm, double limit_mm) {
            return new Figure(label, value_mm, value_mm - limit_mm, value_mm >= limit_mm);
        }
    }

    private GateFigures() {}

    /** By check; a check without figures cannot be computed, or not yet. */
    static Map<GateCheck, List<Figure>> of(DesignSheet sheet, ComputedFrame frame) {
        GivenInputs in = new GivenInputs(sheet.geometry());
        Map<GateCheck, List<Figure>> figures = new EnumMap<>(GateCheck.class);
        put(figures, GateCheck.CLOSURE, frame.geometry(), geometry -> closure(in, geometry));
        put(
                figures,
                GateCheck.TRAIL,
                frame.geometry(),
                geometry -> Answer.of(List.of(new Figure("trail", geometry.trail_mm(), null, null))));
        put(figures, GateCheck.TYRE_CLEARANCE, frame.geometry(), geometry -> tyre(in, geometry));
        put(
                figures,
                GateCheck.TOE_CLEARANCE,
                frame.geometry(),
                geometry -> Clearances.pedalToFrontTyre(geometry, CRANK_MM, PEDAL_MM)
                        .then(room -> Answer.of(List.of(Figure.of("with a crank of 170", room)))));
        put(figures, GateCheck.STANDOVER, frame.axes(), axes -> standover(in, axes));
        put(figures, GateCheck.HEAD_NODES, frame.axes(), axes -> nodes(in, axes));
        put(figures, GateCheck.MITRES, frame.cuts(), list -> Answer.of(List.of(mitres(list))));
        return figures;
    }

    private static <T> void put(
            Map<GateCheck, List<Figure>> figures,
            GateCheck check,
            Answer<T> from,
            Function<T, Answer<List<Figure>>> made) {
        if (from.then(made) instanceof Answer.Determined<List<Figure>> there) {
            figures.put(check, there.value());
        }
    }

    private static Answer<List<Figure>> closure(GivenInputs in, FrameGeometry geometry) {
        return in.all(GeometryInput.STACK_ASKED).then(there -> {
            double off = Math.abs(geometry.stack_mm() - in.number(GeometryInput.STACK_ASKED));
            return Answer.of(List.of(
                    new Figure("stack", geometry.stack_mm(), null, null),
                    new Figure("off the stack asked for", off, CLOSES_WITHIN_MM - off, off <= CLOSES_WITHIN_MM)));
        });
    }

    private static Answer<List<Figure>> tyre(GivenInputs in, FrameGeometry geometry) {
        return in.all(GeometryInput.SEAT_TUBE_OUTSIDE)
                .then(there -> Clearances.rearTyreToSeatTube(
                        geometry, in.number(GeometryInput.SEAT_TUBE_OUTSIDE) / 2, TYRE_MM))
                .then(room -> Answer.of(List.of(Figure.of("tyre to tube", room))));
    }

    private static Answer<List<Figure>> standover(GivenInputs in, TubeAxes axes) {
        return in.all(GeometryInput.TOP_TUBE_OUTSIDE)
                .then(there -> Clearances.standover(
                        axes.geometry(),
                        axes.topTubeAtSeat(),
                        axes.topTubeAtHead(),
                        in.number(GeometryInput.TOP_TUBE_OUTSIDE) / 2,
                        RIDER_AHEAD_MM,
                        Double.MAX_VALUE))
                .then(room -> Answer.of(List.of(new Figure("over the top tube", room.value_mm(), null, null))));
    }

    private static Answer<List<Figure>> nodes(GivenInputs in, TubeAxes axes) {
        return in.all(GeometryInput.TOP_TUBE_OUTSIDE, GeometryInput.DOWN_TUBE_OUTSIDE)
                .then(there -> Clearances.headTube(
                        axes.geometry(),
                        new Clearances.TubeAtHead(
                                axes.topTubeAtHead(),
                                axes.topTubeAtSeat(),
                                in.number(GeometryInput.TOP_TUBE_OUTSIDE) / 2),
                        new Clearances.TubeAtHead(
                                axes.downTubeAtHead(),
                                FrameGeometry.SHELL,
                                in.number(GeometryInput.DOWN_TUBE_OUTSIDE) / 2),
                        TOES_MM))
                .then(room -> Answer.of(List.of(
                        Figure.of("weld toes apart", room.toes()),
                        Figure.atLeast("above the top tube", room.upperEnd().value_mm(), EDGE_MM),
                        Figure.atLeast("below the down tube", room.lowerEnd().value_mm(), EDGE_MM))));
    }

    /** How many joints are no plain mitre: a tube wider than its mate, or a feather edge. */
    private static Figure mitres(CutList list) {
        long edges = list.pieces().stream()
                .flatMap(piece -> piece.cautions().stream())
                .filter(caution -> caution.kind() == Caution.Kind.FEATHER_EDGE)
                .count();
        long spoiled = edges + list.notCut().size();
        return new Figure("joints to form or decide", spoiled, null, spoiled == 0);
    }
}
