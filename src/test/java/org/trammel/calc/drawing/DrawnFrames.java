package org.trammel.calc.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.ArmPlan;
import org.trammel.calc.geometry.ArmUpper;
import org.trammel.calc.geometry.BentStay;
import org.trammel.calc.geometry.DemoFrames;
import org.trammel.calc.geometry.DropoutPlate;
import org.trammel.calc.geometry.RandomFrames;
import org.trammel.calc.geometry.RearPlan;
import org.trammel.calc.geometry.SideView;
import org.trammel.calc.geometry.StayBend;
import org.trammel.calc.geometry.StayPlaces;
import org.trammel.calc.geometry.Stays;
import org.trammel.calc.geometry.TubeAxes;
import org.trammel.calc.units.Answer;

/** Views of frames: those of the invented workshop, and frames nobody drew. */
public final class DrawnFrames {

    private static final DropoutPlate PLATE = new DropoutPlate(6, 0.1, 25);

    /**
     * A frame and its views.
     *
     * @param plan null where its rear end swings
     */
    public record Drawn(
            String name, SideView side, @Nullable RearPlan plan) {

        @Override
        public String toString() {
            return name;
        }
    }

    private DrawnFrames() {}

    /** All of the invented workshop's. */
    public static Stream<Drawn> demo() {
        return DemoFrames.all().map(DrawnFrames::demo);
    }

    /** One of them. */
    public static Drawn demo(String name) {
        return demo().filter(each -> each.name().equals(name)).findFirst().orElseThrow();
    }

    private static Drawn demo(DemoFrames.Row row) {
        TubeAxes axes = row.axes();
        SideView.Outsides outsides = new SideView.Outsides(
                row.number("head_tube_outside_mm"),
                row.number("down_tube_outside_mm"),
                row.number("top_tube_outside_mm"),
                row.number("seat_tube_outside_mm"),
                row.number("chainstay_outside_mm", 22),
                row.number("seatstay_outside_mm", 16),
                row.number("shell_outside_mm"),
                row.number("shell_bore_mm"));
        if (!row.has("seatstay_at_seat_mm")) {
            DemoFrames.Row rear = DemoFrames.read("/geometry/suspension.csv").stream()
                    .filter(each -> each.name().equals(row.name()))
                    .findFirst()
                    .orElseThrow();
            return new Drawn(
                    row.name(),
                    SideView.swinging(
                            axes, rear.point("pivot"), rear.point("arm_eye"), rear.point("frame_eye"), outsides),
                    null);
        }
        Stays stays = value(Stays.of(
                row.geometry(),
                new StayPlaces(
                        row.number("seatstay_at_seat_mm"),
                        row.number("chainstay_at_shell_mm", 24),
                        row.number("axle_width_mm"),
                        18,
                        4,
                        row.number("shell_outside_mm"),
                        row.number("seat_tube_outside_mm"))));
        boolean narrow = row.number("front_wheel_radius_mm") < 352 && row.number("front_wheel_radius_mm") > 335;
        return new Drawn(
                row.name(),
                SideView.rigid(axes, axes.geometry().onSeatTube(row.number("seatstay_at_seat_mm")), outsides),
                value(RearPlan.of(
                        row.geometry(),
                        value(BentStay.of(stays.chainstay(), List.of())),
                        new RearPlan.Sizes(
                                row.number("shell_outside_mm"),
                                row.number("shell_bore_mm"),
                                row.number("shell_width_mm"),
                                row.number("axle_width_mm"),
                                row.number("chainstay_outside_mm", 22),
                                PLATE,
                                narrow ? 28.0 : null))));
    }

    /** Frames of a fixed seed, every other one with a tyre. */
    public static Stream<Drawn> random(int count, long seed) {
        List<TubeAxes> all = RandomFrames.axes(count, seed);
        return IntStream.range(0, count).mapToObj(i -> random("random " + i, all.get(i), i));
    }

    private static Drawn random(String name, TubeAxes axes, int i) {
        SideView.Outsides outsides =
                new SideView.Outsides(36 + i % 20, 28 + i % 17, 25 + i % 12, 27 + i % 12, 22, 16, 40, 34);
        double below = axes.geometry().layout().seatTube_mm() * 0.15;
        Optional<RearPlan> plan =
                Stays.of(axes.geometry(), new StayPlaces(below, 20 + i % 16, 100 + i % 98, 18, 4, 40, 27 + i % 12))
                                        .then(stays -> BentStay.of(stays.chainstay(), bends(i)))
                                        .then(stay -> RearPlan.of(
                                                axes.geometry(),
                                                stay,
                                                new RearPlan.Sizes(
                                                        40,
                                                        i % 3 == 0 ? 0 : 34,
                                                        68 + i % 33,
                                                        100 + i % 98,
                                                        12 + i % 14,
                                                        PLATE,
                                                        i % 2 == 0 ? null : 20.0 + i % 90)))
                                instanceof Answer.Determined<RearPlan> there
                        ? Optional.of(there.value())
                        : Optional.empty();
        return new Drawn(name, SideView.rigid(axes, axes.geometry().onSeatTube(below), outsides), plan.orElse(null));
    }

    /** Every third stay is bent once, every fifth twice. */
    private static List<StayBend> bends(int i) {
        if (i % 3 == 1) {
            return List.of(new StayBend(150, i % 2 == 0 ? 12 : -9, 120));
        }
        return i % 5 == 2 ? List.of(new StayBend(90, -8, 100), new StayBend(210, 14, 150)) : List.of();
    }

    /** Swing arms of the invented workshop's frames, plain and bent, with all that can be drawn of one and with the least. */
    public static Stream<Arm> arms() {
        return DemoFrames.read("/geometry/suspension.csv").stream()
                .flatMap(rear -> IntStream.range(0, 40).mapToObj(i -> {
                    ArmPlan plan = arm(rear, i);
                    return new Arm(plan, i % 4 == 3 ? null : upper(plan, rear, i));
                }));
    }

    /** A swing arm; without upper members where they are not known. */
    public record Arm(ArmPlan plan, @Nullable ArmUpper upper) {}

    private static ArmUpper upper(ArmPlan plan, DemoFrames.Row rear, int i) {
        return value(ArmUpper.of(
                plan,
                rear.point("arm_eye"),
                new ArmUpper.Sizes(24 + 3 * (i % 19), 12 + i % 11, i % 7 == 0 ? null : 16.0 + i % 23),
                new ArmPlan.Ends(18, 4, List.of())));
    }

    private static ArmPlan arm(DemoFrames.Row rear, int i) {
        double inside = 36 + 3 * (i % 17);
        double width = 14 + i % 19;
        return value(ArmPlan.of(
                DemoFrames.all()
                        .filter(each -> each.name().equals(rear.name()))
                        .findFirst()
                        .orElseThrow()
                        .geometry(),
                rear.point("pivot"),
                new ArmPlan.Sizes(
                        inside,
                        width,
                        i % 3 == 0 ? null : new ArmPlan.Bosses(26 + i % 23, inside + 2 * width),
                        i % 4 == 1 ? null : new ArmPlan.Bridge(50 + 4 * i, 12 + i % 14),
                        130 + 4 * (i % 18),
                        PLATE,
                        i % 5 == 2 ? null : 40.0 + i % 40),
                new ArmPlan.Ends(18, 4, i % 2 == 0 ? List.of() : List.of(new StayBend(70 + i, 4 + i % 9, 120)))));
    }

    private static <T> T value(Answer<T> answer) {
        return ((Answer.Determined<T>) answer).value();
    }
}
