package org.trammel.shop.designs;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleBinaryOperator;
import java.util.function.Function;
import org.trammel.calc.geometry.CutList;
import org.trammel.calc.geometry.ExpectedMass;
import org.trammel.calc.geometry.FormedEnd;
import org.trammel.calc.geometry.FormedPlace;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.FrameTube;
import org.trammel.calc.geometry.Point;
import org.trammel.calc.geometry.TubeAxes;
import org.trammel.calc.units.Answer;
import org.trammel.shop.routes.Kinds;

/**
 * What a computed frame knows that a characteristic of a route asks for. The characteristic says by its name which it
 * asks for; one of any other name, or of another unit, is typed by hand.
 */
enum DrawnFeature {
    DOWN_TUBE_OUTSIDE("TUBE_OUTSIDE", "mm", input(GeometryInput.DOWN_TUBE_OUTSIDE), "Down tube outside diameter"),
    DOWN_TUBE_WALL("TUBE_WALL", "mm", input(GeometryInput.DOWN_TUBE_WALL), "Down tube wall"),
    CHAINSTAY_OUTSIDE("TUBE_OUTSIDE", "mm", input(GeometryInput.CHAINSTAY_OUTSIDE), "Chainstay outside diameter"),
    CHAINSTAY_WALL("TUBE_WALL", "mm", input(GeometryInput.CHAINSTAY_WALL), "Chainstay wall"),
    DOWN_TUBE_BLANK(
            "CUT_LENGTH", "mm", blank(FrameTube.DOWN_TUBE), "Down tube blank before forming", "Down tube blank"),
    TOP_TUBE_BLANK("CUT_LENGTH", "mm", blank(FrameTube.TOP_TUBE), "Top tube blank"),
    SEAT_TUBE_BLANK("CUT_LENGTH", "mm", blank(FrameTube.SEAT_TUBE), "Seat tube blank"),
    CHAINSTAY_BLANK("CUT_LENGTH", "mm", blank(FrameTube.CHAINSTAY), "Chainstay blank"),
    SEATSTAY_BLANK("CUT_LENGTH", "mm", blank(FrameTube.SEATSTAY), "Seatstay blank"),
    DOWN_TUBE_TO_HEAD_TUBE("CUT_ANGLE", "°", axes(TubeAxes::downTubeToHeadTube_rad), "Angle down tube to head tube"),
    TOP_TUBE_TO_HEAD_TUBE("CUT_ANGLE", "°", axes(TubeAxes::topTubeToHeadTube_rad), "Angle top tube to head tube"),
    TOP_TUBE_TO_SEAT_TUBE("CUT_ANGLE", "°", axes(TubeAxes::topTubeToSeatTube_rad), "Angle top tube to seat tube"),
    DOWN_TUBE_TO_SEAT_TUBE("CUT_ANGLE", "°", axes(TubeAxes::downTubeToSeatTube_rad), "Angle down tube to seat tube"),
    JIG_REACH("JIG_PLACE", "mm", layout(frame -> frame.layout().reach_mm()), "Jig read-back, reach"),
    JIG_STACK("JIG_PLACE", "mm", layout(FrameGeometry::stack_mm), "Jig read-back, stack"),
    JIG_AXLE_X("JIG_PLACE", "mm", drawn -> value(drawn.frame().rearAxle(), Point::x_mm), "Jig read-back, rear axle x"),
    JIG_AXLE_Y("JIG_PLACE", "mm", layout(frame -> frame.rearAxle().y_mm()), "Jig read-back, rear axle y"),
    JIG_HEAD_ANGLE("JIG_ANGLE", "°", input(GeometryInput.HEAD_ANGLE), "Jig read-back, head angle"),
    JIG_SEAT_ANGLE("JIG_ANGLE", "°", input(GeometryInput.SEAT_ANGLE), "Jig read-back, seat angle"),
    ARM_ALONG(
            "JIG_PLACE",
            "mm",
            fromPivot(GeometryInput.PIVOT_AHEAD, frame -> frame.rearAxle().x_mm()),
            "Jig read-back, pivot to axle along"),
    ARM_UP(
            "JIG_PLACE",
            "mm",
            fromPivot(GeometryInput.PIVOT_ABOVE, frame -> frame.rearAxle().y_mm()),
            "Jig read-back, pivot to axle up"),
    HEAD_ANGLE("BUILT_ANGLE", "°", input(GeometryInput.HEAD_ANGLE), "Head angle as built", "Head angle"),
    SEAT_ANGLE("BUILT_ANGLE", "°", input(GeometryInput.SEAT_ANGLE), "Seat angle as built", "Seat angle"),
    STACK("BUILT_PLACE", "mm", layout(FrameGeometry::stack_mm), "Stack as built", "Stack"),
    REACH("BUILT_PLACE", "mm", layout(frame -> frame.layout().reach_mm()), "Reach as built", "Reach"),
    SHELL_TO_SHELL("BUILT_PLACE", "mm", input(GeometryInput.SHELL_TO_SHELL), "Shell to shell"),
    WHEELBASE("WHEELBASE", "mm", drawn -> value(drawn.frame().wheelbase_mm(), Function.identity()), "Wheelbase"),
    REAR_AXLE_HEIGHT("AXLE_HEIGHT", "mm", layout(frame -> frame.rearAxle().y_mm()), "Rear axle height over shell"),
    FRONT_AXLE_HEIGHT("AXLE_HEIGHT", "mm", layout(frame -> frame.frontAxle().y_mm()), "Front axle height over shell"),
    AXLE_WIDTH("AXLE_WIDTH", "mm", input(GeometryInput.AXLE_WIDTH), "Axle width inside"),
    SHELL_WIDTH("SHELL_WIDTH", "mm", input(GeometryInput.SHELL_WIDTH), "Shell width"),
    PROUD_OF_SEAT_TUBE(
            "SHELL_PROUD", "mm", proudOf(FormedPlace.SEAT_TUBE_AT_SHELL), "Shell proud of the seat tube, each side"),
    PROUD_OF_DOWN_TUBE(
            "SHELL_PROUD", "mm", proudOf(FormedPlace.DOWN_TUBE_AT_SHELL), "Shell proud of the down tube, each side"),
    SHOCK_LENGTH("SHOCK_LENGTH", "mm", input(GeometryInput.SHOCK_LENGTH), "Shock eye to eye"),
    FORMED_SHORT("FORMED_AXIS", "mm", atShell(Math::min), "Shell end of down tube, short axis"),
    FORMED_LONG("FORMED_AXIS", "mm", atShell(Math::max), "Shell end of down tube, long axis"),
    SADDLE_HEIGHT("CONTACT_POINT", "mm", input(GeometryInput.SADDLE_HEIGHT), "Saddle height"),
    SADDLE_TO_BAR("CONTACT_POINT", "mm", input(GeometryInput.SADDLE_TO_BAR), "Saddle to bar"),
    SADDLE_OVER_BAR("CONTACT_POINT", "mm", input(GeometryInput.SADDLE_OVER_BAR), "Saddle over bar"),
    MASS("MASS", "g", drawn -> grams(drawn.mass()), "Mass uncoated") {

        @Override
        boolean isOf(String kind) {
            return !kind.equals(Kinds.SWING_ARM);
        }
    },
    ARM_MASS("MASS", "g", drawn -> grams(drawn.armMass()), "Mass uncoated") {

        @Override
        boolean isOf(String kind) {
            return kind.equals(Kinds.SWING_ARM);
        }
    },
    ARM_BORES("BORE", "mm", input(GeometryInput.ARM_BORE), "Pivot bores") {

        @Override
        boolean isOf(String kind) {
            return kind.equals(Kinds.SWING_ARM);
        }
    },
    PIVOT_BORES("BORE", "mm", input(GeometryInput.PIVOT_BORE), "Pivot bores") {

        @Override
        boolean isOf(String kind) {
            return !kind.equals(Kinds.SWING_ARM);
        }
    },
    HEAD_TUBE_SEATS("BORE", "mm", input(GeometryInput.HEAD_TUBE_SEATS), "Head tube seats"),
    SEAT_TUBE_BORE("BORE", "mm", input(GeometryInput.SEAT_TUBE_BORE), "Seat tube bore");

    private static final double G_PER_KG = 1000;

    /** What the fit sheet says needs no frame that closes. */
    private static final Set<DrawnFeature> OF_THE_FIT_SHEET = EnumSet.of(SADDLE_HEIGHT, SADDLE_TO_BAR, SADDLE_OVER_BAR);

    /** A frame with the inputs it was computed from. */
    record Drawn(GivenInputs in, ComputedFrame frame, Answer<ExpectedMass> mass, Answer<ExpectedMass> armMass) {}

    private final String toleranceClass;
    private final String unit;
    private final Function<Drawn, OptionalDouble> found;
    private final List<String> names;

    DrawnFeature(String toleranceClass, String unit, Function<Drawn, OptionalDouble> found, String... names) {
        this.toleranceClass = toleranceClass;
        this.unit = unit;
        this.found = found;
        this.names = List.of(names);
    }

    /**
     * The feature a characteristic asks for by its name and unit.
     *
     * @param kind of the route it stands in
     */
    static Optional<DrawnFeature> asked(String kind, String name, String unit) {
        String plain = name.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(feature -> feature.unit.equals(unit)
                        && feature.isOf(kind)
                        && feature.names.stream()
                                .anyMatch(one -> one.toLowerCase(Locale.ROOT).equals(plain)))
                .findFirst();
    }

    /** Whether a route of this kind asks for it. */
    boolean isOf(String kind) {
        return true;
    }

    String toleranceClass() {
        return toleranceClass;
    }

    /** The names by which a characteristic asks for it. */
    List<String> names() {
        return names;
    }

    /** Millimetres or degrees; empty where the frame does not close, or does not know it. */
    OptionalDouble of(Drawn drawn) {
        return OF_THE_FIT_SHEET.contains(this) || drawn.frame().geometry() instanceof Answer.Determined
                ? found.apply(drawn)
                : OptionalDouble.empty();
    }

    private static Function<Drawn, OptionalDouble> input(GeometryInput input) {
        return drawn -> drawn.in().has(input) ? OptionalDouble.of(drawn.in().number(input)) : OptionalDouble.empty();
    }

    /** Both axes of the down tube at the shell: those of its oval, or its outside twice where it stays round. */
    private static Function<Drawn, OptionalDouble> atShell(DoubleBinaryOperator which) {
        return drawn -> value(drawn.frame().tubes(), tubes -> {
            FormedEnd end = tubes.formed().get(FormedPlace.DOWN_TUBE_AT_SHELL);
            return end == null
                    ? tubes.downTube().outside_mm()
                    : which.applyAsDouble(end.inFramePlane_mm(), end.acrossFrame_mm());
        });
    }

    /**
     * From a face of the shell to the side of a tube that stands on its middle: (shell width − tube across the frame) / 2.
     * Empty for a seat tube whose axis runs past the shell, as there it stands on another tube.
     */
    private static Function<Drawn, OptionalDouble> proudOf(FormedPlace place) {
        return drawn -> {
            GivenInputs in = drawn.in();
            boolean past = place.tube() == FrameTube.SEAT_TUBE
                    && Math.abs(in.number(GeometryInput.SEAT_TUBE_OFFSET, 0))
                            >= in.number(GeometryInput.SHELL_OUTSIDE, Double.POSITIVE_INFINITY) / 2;
            return past || !in.has(GeometryInput.SHELL_WIDTH)
                    ? OptionalDouble.empty()
                    : value(
                            new TubeInputs(in).across_mm(place),
                            across -> (in.number(GeometryInput.SHELL_WIDTH) - across) / 2);
        };
    }

    private static Function<Drawn, OptionalDouble> layout(Function<FrameGeometry, Double> value) {
        return drawn -> value(drawn.frame().geometry(), value);
    }

    private static Function<Drawn, OptionalDouble> axes(Function<TubeAxes, Double> angle_rad) {
        return drawn -> value(drawn.frame().axes(), axes -> Math.toDegrees(angle_rad.apply(axes)));
    }

    private static Function<Drawn, OptionalDouble> fromPivot(
            GeometryInput pivot, Function<FrameGeometry, Double> axle_mm) {
        return drawn -> drawn.in().has(pivot)
                ? value(
                        drawn.frame().geometry(),
                        frame -> axle_mm.apply(frame) - drawn.in().number(pivot))
                : OptionalDouble.empty();
    }

    private static OptionalDouble grams(Answer<ExpectedMass> mass) {
        return value(mass, expected -> G_PER_KG * expected.mass_kg());
    }

    private static Function<Drawn, OptionalDouble> blank(FrameTube tube) {
        return drawn -> drawn.frame().cuts() instanceof Answer.Determined<CutList> list
                ? list.value().pieces().stream()
                        .filter(piece -> piece.tube() == tube)
                        .mapToDouble(piece -> piece.blank_mm())
                        .findFirst()
                : OptionalDouble.empty();
    }

    private static <T> OptionalDouble value(Answer<T> answer, Function<T, Double> value) {
        return answer instanceof Answer.Determined<T> there
                ? OptionalDouble.of(value.apply(there.value()))
                : OptionalDouble.empty();
    }
}
