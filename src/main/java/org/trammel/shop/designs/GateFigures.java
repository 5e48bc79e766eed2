package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.Caution;
import org.trammel.calc.geometry.Clearances;
import org.trammel.calc.geometry.CutList;
import org.trammel.calc.geometry.FormedPlace;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.Point;
import org.trammel.calc.geometry.TubeAxes;
import org.trammel.calc.units.Answer;
import org.trammel.calc.units.DecimalSign;
import org.trammel.shop.settings.Setting;

/**
 * What the inputs of a revision and its order say to the checks of the design gate. The limits are settings of the shop,
 * each with its source; that the pedal's distance to the tyre is judged only where the feet are not held is the rule of
 * ISO 4210-2, from memory.
 */
final class GateFigures {

    /** What the order lacks, as the input of a gap. */
    static final String ORDER = "order";

    private static final Set<String> OUTSIDE_THE_DRAWING = Set.of(ORDER, ComputedFrame.TANDEM);

    /** What the cut list warns of and no bench mends; of saws and templates it tells the bench alone. */
    private static final Map<Caution.Kind, String> WARNED = new EnumMap<>(Map.of(
            Caution.Kind.SHORT_ZONE, "ends formed over less than their cut",
            Caution.Kind.SHORT_BUTT, "butts left short at a weld",
            Caution.Kind.BESIDE_MATE, "tubes that stand beside their mate",
            Caution.Kind.SLOT_BREAKS_OUT, "slots through the side of a stay"));

    private final GivenInputs in;
    private final ComputedFrame frame;
    private final GateLimits limits;
    private final OrderTells.@Nullable Told told;
    private final List<CheckFigure> nominals;
    private final DesignSheet sheet;
    private final Optional<TestFamily> family;
    private final GateBasis basis;
    private final Map<GateCheck, CheckFigures> figures = new EnumMap<>(GateCheck.class);

    private GateFigures(
            DesignSheet sheet,
            ComputedFrame frame,
            GateLimits limits,
            OrderTells.@Nullable Told told,
            List<CheckFigure> nominals,
            Optional<TestFamily> family) {
        this.in = new GivenInputs(sheet.geometry());
        this.frame = frame;
        this.limits = limits;
        this.told = told;
        this.nominals = nominals;
        this.sheet = sheet;
        this.family = family;
        this.basis = new GateBasis(sheet, told);
    }

    /**
     * By check, every check that concerns the frame.
     *
     * @param told null where no order tells anything
     * @param nominals typed nominals beside those of the drawing
     * @param family the test family the revision names; empty where none is named or kept
     */
    static Map<GateCheck, CheckFigures> of(
            DesignSheet sheet,
            ComputedFrame frame,
            GateLimits limits,
            OrderTells.@Nullable Told told,
            List<CheckFigure> nominals,
            Optional<TestFamily> family) {
        return new GateFigures(sheet, frame, limits, told, nominals, family).all();
    }

    private Map<GateCheck, CheckFigures> all() {
        put(GateCheck.CLOSURE, frame.geometry(), this::closure);
        put(GateCheck.TRAIL, trail());
        put(
                GateCheck.TYRE_CLEARANCE,
                behind("The rear tyre's room", List.of(frame.geometry().then(this::tyre))));
        put(GateCheck.TYRE_STAYS, behind("The rear tyre's room", new TyreFigures(in, frame, limits).all()));
        if (GateCheck.SWING.concerns(sheet)) {
            put(GateCheck.SWING, new SwingFigures(in, frame, limits).all());
        }
        put(GateCheck.TOE_CLEARANCE, frame.geometry(), this::toes);
        put(GateCheck.STANDOVER, andBehind("The rear rider's standover", standover()));
        put(GateCheck.HEAD_NODES, frame.axes(), this::nodes);
        put(
                GateCheck.MITRES,
                andBehind(
                        "What joins behind the front seat tube",
                        List.of(frame.cuts().then(list -> Answer.of(mitres(list))))));
        put(GateCheck.SEATPOST, andBehind("The rear seatpost", new PostFigures(in, frame).all()));
        put(GateCheck.OVERALL_LENGTH, longest());
        put(GateCheck.COUNTRY, order(), this::lever);
        put(GateCheck.TEST_FAMILY, new FamilyFigures(sheet.testFamily(), family.orElse(null), frame, told).all());
        put(GateCheck.NOMINALS, frame.geometry(), geometry -> Answer.of(nominals));
        for (GateCheck check : GateCheck.values()) {
            if (check.concerns(sheet)) {
                figures.computeIfAbsent(
                        check,
                        other -> new CheckFigures(
                                List.of(), List.of(), List.of(), basis.of(other, List.of(), List.of())));
            }
        }
        return figures;
    }

    /** The figures of a frame with one shell; what a tandem is drawn by says nothing of them. */
    private List<Answer<List<CheckFigure>>> behind(String what, List<Answer<List<CheckFigure>>> figures) {
        return frame.isTandem() ? List.of(ComputedFrame.notOfATandem(what)) : figures;
    }

    /** The figures of the front part, and of a tandem that there are none of the rest. */
    private List<Answer<List<CheckFigure>>> andBehind(String what, List<Answer<List<CheckFigure>>> figures) {
        return frame.isTandem()
                ? Stream.concat(figures.stream(), Stream.of(ComputedFrame.<List<CheckFigure>>notOfATandem(what)))
                        .toList()
                : figures;
    }

    private Answer<OrderTells.Told> order() {
        return told == null ? Answer.none(ORDER, "No order tells about it.") : Answer.of(told);
    }

    private <T> void put(GateCheck check, Answer<T> from, Function<T, Answer<List<CheckFigure>>> made) {
        put(check, List.of(from.then(made)));
    }

    /** What can be computed is shown, whatever is missing for the rest. */
    private void put(GateCheck check, List<Answer<List<CheckFigure>>> answers) {
        List<CheckFigure> there = new ArrayList<>();
        Set<String> lacking = new LinkedHashSet<>();
        Set<String> cannot = new LinkedHashSet<>();
        for (Answer<List<CheckFigure>> answer : answers) {
            if (answer instanceof Answer.Determined<List<CheckFigure>> found) {
                there.addAll(found.value());
            } else if (answer instanceof Answer.NotDeterminable<List<CheckFigure>> none) {
                none.gaps()
                        .forEach(gap -> (OUTSIDE_THE_DRAWING.contains(gap.input()) || in.isMissing(gap)
                                        ? lacking
                                        : cannot)
                                .add(written(gap.words())));
            }
        }
        List<String> open = Stream.concat(lacking.stream(), cannot.stream()).toList();
        figures.put(
                check,
                new CheckFigures(there, List.copyOf(lacking), List.copyOf(cannot), basis.of(check, there, open)));
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
                                limits.of("stack.off")))));
    }

    /** Inside the band of the category that was ordered; without one it is shown, and nobody says that it is met. */
    private List<Answer<List<CheckFigure>>> trail() {
        Answer<GateLimits.TrailBand> band = order().then(order -> limits.trail(order.category())
                .map(Answer::of)
                .orElseGet(() -> Answer.none(
                        ORDER, "The shop keeps no band of trail for the category of use that was ordered.")));
        Answer<Double> trail = frame.geometry().then(geometry -> Answer.of(geometry.trail_mm()));
        return shownOrJudged(
                trail,
                mm -> CheckFigure.information("trail", mm),
                band,
                (mm, between) -> List.of(
                        CheckFigure.atLeast("trail", mm, between.least()),
                        CheckFigure.atMost("trail", mm, between.most())));
    }

    /** A figure against what it is judged by; where that is not known the figure alone, and what is missing. */
    private static <T> List<Answer<List<CheckFigure>>> shownOrJudged(
            Answer<Double> figure,
            DoubleFunction<CheckFigure> shown,
            Answer<T> by,
            BiFunction<Double, T, List<CheckFigure>> judged) {
        return by instanceof Answer.Determined<T> there
                ? List.of(figure.then(mm -> Answer.of(judged.apply(mm, there.value()))))
                : List.of(
                        figure.then(mm -> Answer.of(List.of(shown.apply(mm)))), by.then(never -> Answer.of(List.of())));
    }

    private Answer<List<CheckFigure>> tyre(FrameGeometry geometry) {
        return new TubeInputs(in)
                .outermost_mm(FormedPlace.SEAT_TUBE_AT_SHELL)
                .then(outermost -> Clearances.rearTyreToSeatTube(geometry, outermost / 2, limits.number("tyre")))
                .then(room ->
                        Answer.of(List.of(CheckFigure.atLeast("tyre to tube", room.value_mm(), limits.of("tyre")))));
    }

    private Answer<List<CheckFigure>> toes(FrameGeometry geometry) {
        double crank = in.number(GeometryInput.CRANK, limits.number("crank"));
        String label = (in.has(GeometryInput.CRANK) ? "with a crank of " : "with the usual crank of ")
                + DecimalSign.COMMA.write(Nominal.plain(BigDecimal.valueOf(crank)));
        boolean held = in.number(GeometryInput.FEET_HELD, 0) > 0;
        return Clearances.pedalToFrontTyre(geometry, crank, limits.number("pedal"))
                .then(room -> Answer.of(
                        held
                                ? List.of(
                                        CheckFigure.information(label, room.value_mm()),
                                        CheckFigure.word("feet", "held, so it is not judged", null))
                                : List.of(CheckFigure.atLeast(label, room.value_mm(), limits.of("pedal")))));
    }

    private List<Answer<List<CheckFigure>>> standover() {
        String label = "over the top tube, "
                + DecimalSign.COMMA.write(
                        new BigDecimal(limits.of("standover.ahead").value())) + " ahead";
        Answer<BigDecimal> inseam = order().then(order -> order.inseam_mm() == null
                ? Answer.none(ORDER, "The order tells no inseam.")
                : Answer.of(order.inseam_mm()));
        return shownOrJudged(
                frame.axes().then(this::overTheTopTube_mm),
                mm -> CheckFigure.information(label, mm),
                inseam,
                (mm, leg) -> List.of(
                        CheckFigure.atMost(label, mm, leg.doubleValue() - limits.number("standover.spare"), "mm")
                                .by(limits.of("standover.spare"))
                                .aboutTheRider()));
    }

    private Answer<Double> overTheTopTube_mm(TubeAxes axes) {
        Point along = axes.topTubeAtHead().minus(axes.topTubeAtSeat());
        double share = (limits.number("standover.ahead") - axes.topTubeAtSeat().x_mm()) / along.x_mm();
        double tube_mm = Math.hypot(along.x_mm(), along.y_mm());
        TubeInputs tubes = new TubeInputs(in);
        return TubeInputs.with(
                        tubes.highest_mm(FormedPlace.TOP_TUBE_AT_SEAT, share * tube_mm),
                        tubes.highest_mm(FormedPlace.TOP_TUBE_AT_HEAD, (1 - share) * tube_mm),
                        (atSeat, atHead) -> Clearances.standover(
                                axes.geometry(),
                                axes.topTubeAtSeat(),
                                axes.topTubeAtHead(),
                                Math.max(atSeat, atHead) / 2,
                                limits.number("standover.ahead"),
                                Double.MAX_VALUE))
                .then(room -> Answer.of(room.value_mm()));
    }

    /** As wide as the tubes stand on the head tube: formed ends as they are formed. */
    private Answer<List<CheckFigure>> nodes(TubeAxes axes) {
        TubeInputs tubes = new TubeInputs(in);
        return in.all(GeometryInput.HEAD_TUBE_OUTSIDE)
                .then(there -> TubeInputs.with(
                        tubes.upright_mm(FormedPlace.TOP_TUBE_AT_HEAD),
                        tubes.upright_mm(FormedPlace.DOWN_TUBE_AT_HEAD),
                        (top, down) -> Clearances.headTube(
                                axes.geometry(),
                                in.number(GeometryInput.HEAD_TUBE_OUTSIDE) / 2,
                                new Clearances.TubeAtHead(axes.topTubeAtHead(), axes.topTubeAtSeat(), top / 2),
                                new Clearances.TubeAtHead(axes.downTubeAtHead(), FrameGeometry.SHELL, down / 2),
                                limits.number("weld.toes"))))
                .then(room -> Answer.of(List.of(
                        CheckFigure.atLeast("weld toes apart", room.toes().value_mm(), limits.of("weld.toes")),
                        CheckFigure.atLeast(
                                "above the top tube", room.upperEnd().value_mm(), limits.of("head.edge")),
                        CheckFigure.atLeast(
                                "below the down tube", room.lowerEnd().value_mm(), limits.of("head.edge")))));
    }

    /** How many joints are no plain mitre: a tube wider than its mate, a feather edge, or what the cut list warns of. */
    private static List<CheckFigure> mitres(CutList list) {
        List<CheckFigure> made = new ArrayList<>();
        made.add(undecided(
                "joints to form or decide",
                warned(list, Caution.Kind.FEATHER_EDGE) + list.notCut().size()));
        WARNED.forEach((kind, label) -> {
            long warned = warned(list, kind);
            if (warned > 0) {
                made.add(undecided(label, warned));
            }
        });
        return made;
    }

    private static long warned(CutList list, Caution.Kind kind) {
        return list.pieces().stream()
                .flatMap(piece -> piece.cautions().stream())
                .filter(caution -> caution.kind() == kind)
                .count();
    }

    private static CheckFigure undecided(String label, long count) {
        return CheckFigure.count(label, count, 0).from("none without a decision, common practice");
    }

    /**
     * From the outside of one tube to that of another. Of a frame with a swing arm the front part: the arm enters an oven
     * by itself. Outsides that are not given are left out and named, for what is too long without them is too long.
     */
    private List<Answer<List<CheckFigure>>> longest() {
        Answer<List<CheckFigure>> line = frame.geometry()
                .then(geometry -> in.has(GeometryInput.PIVOT_AHEAD)
                        ? Answer.of(ends(geometry))
                        : frame.rearAxle().then(axle -> {
                            List<Clearances.End> ends = ends(geometry);
                            ends.add(new Clearances.End(axle, new TubeInputs(in).behindTheAxle_mm()));
                            return Answer.of(ends);
                        }))
                .then(ends -> Clearances.overallLength(ends, limits.number("oven.length")))
                .then(room -> Answer.of(List.of(CheckFigure.atMost(
                        "longest line over tubes and dropouts", room.value_mm(), limits.of("oven.length")))));
        return List.of(
                line,
                in.all(GeometryInput.HEAD_TUBE_OUTSIDE, GeometryInput.SHELL_OUTSIDE, GeometryInput.SEAT_TUBE_OUTSIDE)
                        .then(there -> Answer.of(List.of())));
    }

    private List<Clearances.End> ends(FrameGeometry geometry) {
        double head = in.number(GeometryInput.HEAD_TUBE_OUTSIDE, 0) / 2;
        return new ArrayList<>(List.of(
                new Clearances.End(geometry.headTubeTop(), head),
                new Clearances.End(geometry.headTubeBottom(), head),
                new Clearances.End(FrameGeometry.SHELL, in.number(GeometryInput.SHELL_OUTSIDE, 0) / 2),
                new Clearances.End(geometry.seatTubeTop(), in.number(GeometryInput.SEAT_TUBE_OUTSIDE, 0) / 2)));
    }

    private Answer<List<CheckFigure>> lever(OrderTells.Told order) {
        String ordered = order.frontBrakeLever();
        Setting list = limits.leverSide(order.country());
        if (list == null) {
            return Answer.none(ORDER, "No list of the shop names the lever side of " + order.country() + ".");
        }
        String side = list.key().equals("gate.levers.left") ? "left" : "right";
        CheckFigure figure = CheckFigure.word(
                        "front brake lever for " + order.country(), ordered, ordered.equals("none") ? null : side)
                .by(list);
        return Answer.of(List.of(figure));
    }
}
