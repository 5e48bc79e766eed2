package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
    private static final String ORDER = "order";

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
        put(GateCheck.TRAIL, frame.geometry(), this::trail);
        put(GateCheck.TYRE_CLEARANCE, frame.geometry(), this::tyre);
        put(GateCheck.TYRE_STAYS, new TyreFigures(in, frame, limits).all());
        if (GateCheck.SWING.concerns(sheet)) {
            put(GateCheck.SWING, new SwingFigures(in, frame, limits).all());
        }
        put(GateCheck.TOE_CLEARANCE, frame.geometry(), this::toes);
        put(GateCheck.STANDOVER, frame.axes(), this::standover);
        put(GateCheck.HEAD_NODES, frame.axes(), this::nodes);
        put(GateCheck.MITRES, frame.cuts(), list -> Answer.of(List.of(mitres(list))));
        put(GateCheck.SEATPOST, frame.geometry(), this::seatpost);
        put(GateCheck.OVERALL_LENGTH, frame.geometry(), this::longest);
        put(GateCheck.COUNTRY, order(), this::lever);
        put(GateCheck.TEST_FAMILY, frame.geometry(), this::family);
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
                        .forEach(gap -> (gap.input().equals(ORDER) || in.isMissing(gap) ? lacking : cannot)
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

    /** Inside the band of the category that was ordered. */
    private Answer<List<CheckFigure>> trail(FrameGeometry geometry) {
        double trail = geometry.trail_mm();
        if (told == null) {
            return Answer.of(List.of(CheckFigure.information("trail, no category told", trail)));
        }
        return Answer.of(limits.trail(told.category())
                .map(band -> List.of(
                        CheckFigure.atLeast("trail", trail, band.least()),
                        CheckFigure.atMost("trail", trail, band.most())))
                .orElseGet(() -> List.of(CheckFigure.information("trail, no band for the category", trail))));
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

    private Answer<List<CheckFigure>> standover(TubeAxes axes) {
        return in.all(GeometryInput.TOP_TUBE_OUTSIDE)
                .then(there -> Clearances.standover(
                        axes.geometry(),
                        axes.topTubeAtSeat(),
                        axes.topTubeAtHead(),
                        in.number(GeometryInput.TOP_TUBE_OUTSIDE) / 2,
                        limits.number("standover.ahead"),
                        Double.MAX_VALUE))
                .then(room -> Answer.of(List.of(standover(room.value_mm()))));
    }

    private CheckFigure standover(double height_mm) {
        BigDecimal inseam = told == null ? null : told.inseam_mm();
        String label = "over the top tube, "
                + DecimalSign.COMMA.write(
                        new BigDecimal(limits.of("standover.ahead").value())) + " ahead";
        if (inseam == null) {
            return CheckFigure.information(label + ", no inseam told", height_mm);
        }
        double most = inseam.doubleValue() - limits.number("standover.spare");
        return CheckFigure.atMost(label, height_mm, most, "mm")
                .by(limits.of("standover.spare"))
                .aboutTheRider();
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

    /** How many joints are no plain mitre: a tube wider than its mate, or a feather edge. */
    private static CheckFigure mitres(CutList list) {
        long edges = list.pieces().stream()
                .flatMap(piece -> piece.cautions().stream())
                .filter(caution -> caution.kind() == Caution.Kind.FEATHER_EDGE)
                .count();
        return CheckFigure.count(
                "joints to form or decide", edges + list.notCut().size(), 0);
    }

    /**
     * Against the post's mark, against the top tube's node and, where it is given, against what stops a post. The saddle's
     * clamp is where it was typed, else where the fit sheet puts it.
     */
    private Answer<List<CheckFigure>> seatpost(FrameGeometry geometry) {
        boolean byFit = !in.has(GeometryInput.SADDLE_CLAMP) && in.has(GeometryInput.SADDLE_HEIGHT);
        Answer<GivenInputs> needed = byFit
                ? in.all(
                        GeometryInput.SADDLE_HEIGHT,
                        GeometryInput.SADDLE_STACK,
                        GeometryInput.SEATPOST,
                        GeometryInput.SEATPOST_MARK,
                        GeometryInput.TOP_TUBE_AT_SEAT)
                : in.all(
                        GeometryInput.SADDLE_CLAMP,
                        GeometryInput.SEATPOST,
                        GeometryInput.SEATPOST_MARK,
                        GeometryInput.TOP_TUBE_AT_SEAT);
        return needed.then(there -> byFit
                        ? new FitInputs(in).saddle(geometry).then(fit -> Answer.of(fit.clamp_mm()))
                        : Answer.of(in.number(GeometryInput.SADDLE_CLAMP)))
                .then(clamp -> Clearances.seatpost(
                        geometry,
                        in.number(GeometryInput.SEATPOST),
                        in.number(GeometryInput.SEATPOST_MARK),
                        clamp,
                        in.number(GeometryInput.TOP_TUBE_AT_SEAT),
                        in.number(GeometryInput.SEATPOST_DEPTH, Double.MAX_VALUE)))
                .then(room ->
                        Answer.of(seatpost(room.mark().value_mm(), byFit ? "inserted by the fit sheet" : "inserted")));
    }

    private List<CheckFigure> seatpost(double inside_mm, String inserted) {
        List<CheckFigure> made = new ArrayList<>(List.of(
                CheckFigure.atLeast(inserted + ", to the mark", inside_mm, in.number(GeometryInput.SEATPOST_MARK)),
                CheckFigure.atLeast(
                        inserted + ", to the top tube", inside_mm, in.number(GeometryInput.TOP_TUBE_AT_SEAT))));
        if (in.has(GeometryInput.SEATPOST_DEPTH)) {
            made.add(CheckFigure.atMost(
                    inserted + ", in the free depth", inside_mm, in.number(GeometryInput.SEATPOST_DEPTH), "mm"));
        }
        return made;
    }

    /** Of a frame with a swing arm the front part: the arm enters an oven by itself. */
    private Answer<List<CheckFigure>> longest(FrameGeometry geometry) {
        List<Point> points = new ArrayList<>(List.of(
                geometry.headTubeTop(), geometry.headTubeBottom(), FrameGeometry.SHELL, geometry.seatTubeTop()));
        if (!in.has(GeometryInput.PIVOT_AHEAD)) {
            points.add(geometry.rearAxle());
        }
        return Clearances.overallLength(points, limits.number("oven.length"))
                .then(room -> Answer.of(
                        List.of(CheckFigure.atMost("longest line", room.value_mm(), limits.of("oven.length")))));
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

    /** Fork, stack and rider against what the named family was tested up to. */
    private Answer<List<CheckFigure>> family(FrameGeometry geometry) {
        if (family.isEmpty()) {
            return Answer.none(
                    ORDER,
                    sheet.testFamily() == null
                            ? "The revision names no test family."
                            : "No test family " + sheet.testFamily() + " is kept, so nothing is compared.");
        }
        TestFamily tested = family.get();
        List<CheckFigure> made = new ArrayList<>();
        if (tested.longestFork_mm() != null) {
            made.add(CheckFigure.atMost(
                            "fork",
                            geometry.layout().forkLength_mm(),
                            tested.longestFork_mm().doubleValue(),
                            "mm")
                    .from(tested.source()));
        }
        if (tested.leastStack_mm() != null) {
            made.add(CheckFigure.atLeast(
                            "stack", geometry.stack_mm(), tested.leastStack_mm().doubleValue())
                    .from(tested.source()));
        }
        if (tested.mostStack_mm() != null) {
            made.add(CheckFigure.atMost(
                            "stack", geometry.stack_mm(), tested.mostStack_mm().doubleValue(), "mm")
                    .from(tested.source()));
        }
        if (tested.heaviestRider_kg() != null && told != null && told.mass_kg() != null) {
            made.add(CheckFigure.atMost(
                            "rider",
                            told.mass_kg().doubleValue(),
                            tested.heaviestRider_kg().doubleValue(),
                            "kg")
                    .from(tested.source())
                    .aboutTheRider());
        }
        return Answer.of(made);
    }
}
