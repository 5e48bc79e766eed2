package org.trammel.shop.designs;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.trammel.calc.geometry.Caution;
import org.trammel.calc.geometry.Clearances;
import org.trammel.calc.geometry.CutList;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.TubeAxes;
import org.trammel.calc.units.Answer;

/**
 * What the inputs of a revision say to the checks of the design gate. The limits are the shop's rules as the checks word
 * them, common practice and no standard's, but for the pedal's distance to the front tyre, 100 mm without foot retention
 * (ISO 4210-2).
 */
final class GateFigures {

    private static final double CLOSES_WITHIN_MM = 1;
    private static final double TYRE_MM = 6;
    private static final double PEDAL_MM = 100;
    private static final double CRANK_MM = 170;
    private static final double TOES_MM = 8;
    private static final double EDGE_MM = 4;
    private static final double RIDER_AHEAD_MM = 20;

    private final GivenInputs in;
    private final ComputedFrame frame;
    private final GateBasis basis;
    private final Map<GateCheck, CheckFigures> figures = new EnumMap<>(GateCheck.class);

    private GateFigures(DesignSheet sheet, ComputedFrame frame) {
        this.in = new GivenInputs(sheet.geometry());
        this.frame = frame;
        this.basis = new GateBasis(sheet);
    }

    /** By check, every check. */
    static Map<GateCheck, CheckFigures> of(DesignSheet sheet, ComputedFrame frame) {
        return new GateFigures(sheet, frame).all();
    }

    private Map<GateCheck, CheckFigures> all() {
        put(GateCheck.CLOSURE, frame.geometry(), this::closure);
        put(
                GateCheck.TRAIL,
                frame.geometry(),
                geometry -> Answer.of(List.of(CheckFigure.information("trail", geometry.trail_mm()))));
        put(GateCheck.TYRE_CLEARANCE, frame.geometry(), this::tyre);
        put(GateCheck.TOE_CLEARANCE, frame.geometry(), GateFigures::toes);
        put(GateCheck.STANDOVER, frame.axes(), this::standover);
        put(GateCheck.HEAD_NODES, frame.axes(), this::nodes);
        put(GateCheck.MITRES, frame.cuts(), list -> Answer.of(List.of(mitres(list))));
        for (GateCheck check : GateCheck.values()) {
            figures.computeIfAbsent(check, other -> new CheckFigures(List.of(), List.of(), List.of(), basis.of(other)));
        }
        return figures;
    }

    private <T> void put(GateCheck check, Answer<T> from, Function<T, Answer<List<CheckFigure>>> made) {
        List<CheckFigure> there = List.of();
        List<String> lacking = new ArrayList<>();
        List<String> cannot = new ArrayList<>();
        Answer<List<CheckFigure>> answer = from.then(made);
        if (answer instanceof Answer.Determined<List<CheckFigure>> found) {
            there = found.value();
        } else if (answer instanceof Answer.NotDeterminable<List<CheckFigure>> none) {
            none.gaps().forEach(gap -> (in.isMissing(gap) ? lacking : cannot).add(written(gap.words())));
        }
        figures.put(check, new CheckFigures(there, lacking, cannot, basis.of(check)));
    }

    /** A sentence of a computation, with the decimal sign that sentences carry here. */
    private static String written(String words) {
        return words.replaceAll("(?<=\\d)\\.(?=\\d)", ",");
    }

    private Answer<List<CheckFigure>> closure(FrameGeometry geometry) {
        return in.all(GeometryInput.STACK_ASKED)
                .then(there -> Answer.of(List.of(
                        CheckFigure.information("stack", geometry.stack_mm()),
                        CheckFigure.atMost(
                                "off the stack asked for",
                                Math.abs(geometry.stack_mm() - in.number(GeometryInput.STACK_ASKED)),
                                CLOSES_WITHIN_MM))));
    }

    private Answer<List<CheckFigure>> tyre(FrameGeometry geometry) {
        return in.all(GeometryInput.SEAT_TUBE_OUTSIDE)
                .then(there -> Clearances.rearTyreToSeatTube(
                        geometry, in.number(GeometryInput.SEAT_TUBE_OUTSIDE) / 2, TYRE_MM))
                .then(room -> Answer.of(List.of(CheckFigure.atLeast("tyre to tube", room.value_mm(), TYRE_MM))));
    }

    private static Answer<List<CheckFigure>> toes(FrameGeometry geometry) {
        return Clearances.pedalToFrontTyre(geometry, CRANK_MM, PEDAL_MM)
                .then(room ->
                        Answer.of(List.of(CheckFigure.atLeast("with a crank of 170", room.value_mm(), PEDAL_MM))));
    }

    private Answer<List<CheckFigure>> standover(TubeAxes axes) {
        return in.all(GeometryInput.TOP_TUBE_OUTSIDE)
                .then(there -> Clearances.standover(
                        axes.geometry(),
                        axes.topTubeAtSeat(),
                        axes.topTubeAtHead(),
                        in.number(GeometryInput.TOP_TUBE_OUTSIDE) / 2,
                        RIDER_AHEAD_MM,
                        Double.MAX_VALUE))
                .then(room -> Answer.of(List.of(CheckFigure.information("over the top tube", room.value_mm()))));
    }

    private Answer<List<CheckFigure>> nodes(TubeAxes axes) {
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
                        CheckFigure.atLeast("weld toes apart", room.toes().value_mm(), TOES_MM),
                        CheckFigure.atLeast(
                                "above the top tube", room.upperEnd().value_mm(), EDGE_MM),
                        CheckFigure.atLeast(
                                "below the down tube", room.lowerEnd().value_mm(), EDGE_MM))));
    }

    /** How many joints are no plain mitre: a tube wider than its mate, or a feather edge. */
    private static CheckFigure mitres(CutList list) {
        long edges = list.pieces().stream()
                .flatMap(piece -> piece.cautions().stream())
                .filter(caution -> caution.kind() == Caution.Kind.FEATHER_EDGE)
                .count();
        return CheckFigure.count(
                "joints to form or decide", edges + list.notCut().size(), 0);
    }
}
