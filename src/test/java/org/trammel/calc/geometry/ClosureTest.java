package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.trammel.calc.units.Answer;

/** From any sufficient set back to the frame it was taken from; and what is said where a set does not make one. */
class ClosureTest {

    private static final Offset<Double> TENTH = within(0.05);

    /** Sets that frame builders draw from, each with those dimensions of a layout that it replaces. */
    private static Stream<Set<Dimension>> drawnFrom() {
        return Stream.of(
                replaced("HEAD_TUBE", "STACK"),
                replaced("REACH", "EFFECTIVE_TOP_TUBE"),
                replaced("HEAD_TUBE, REACH", "STACK, EFFECTIVE_TOP_TUBE"),
                replaced("SHELL_DROP", "SHELL_HEIGHT"),
                replaced("CHAINSTAY", "REAR_CENTRE_LEVEL"),
                replaced("CHAINSTAY", "WHEELBASE"),
                replaced("FORK_OFFSET", "TRAIL"),
                replaced("HEAD_ANGLE", "TRAIL"),
                replaced("HEAD_ANGLE", "FRONT_CENTRE"),
                replaced("HEAD_ANGLE", "WHEELBASE"),
                replaced("HEAD_ANGLE, HEAD_TUBE", "STACK, FRONT_CENTRE"),
                replaced("HEAD_ANGLE, HEAD_TUBE", "STACK, WHEELBASE"),
                replaced("HEAD_ANGLE, HEAD_TUBE, SHELL_DROP", "STACK, WHEELBASE, SHELL_HEIGHT"),
                replaced("REACH, HEAD_TUBE", "STACK, FRONT_CENTRE_LEVEL"),
                replaced("HEAD_ANGLE, FORK_OFFSET", "TRAIL, FRONT_CENTRE"),
                replaced("FORK_LENGTH", "FORK_STRAIGHT"),
                replaced("SEAT_ANGLE", "EFFECTIVE_TOP_TUBE"),
                replaced("SHELL_DROP, CHAINSTAY", "REAR_SHELL_DROP, REAR_CENTRE_LEVEL"));
    }

    private static Set<Dimension> replaced(String without, String with) {
        Set<Dimension> set = layout();
        for (String name : without.split(", ")) {
            set.remove(Dimension.valueOf(name));
        }
        for (String name : with.split(", ")) {
            set.add(Dimension.valueOf(name));
        }
        return set;
    }

    private static Set<Dimension> layout() {
        return EnumSet.range(Dimension.HEAD_ANGLE, Dimension.REAR_WHEEL_RADIUS);
    }

    private static Map<Dimension, Double> taken(Set<Dimension> set, FrameGeometry from) {
        Map<Dimension, Double> given = new EnumMap<>(Dimension.class);
        set.forEach(dimension -> given.put(dimension, dimension.of(from)));
        return given;
    }

    private static double farthest(FrameGeometry one, FrameGeometry other) {
        return Stream.of(Dimension.values())
                .mapToDouble(dimension -> Math.abs(dimension.of(one) - dimension.of(other)))
                .max()
                .orElseThrow();
    }

    private static ClosureOutcome.Closed closed(Map<Dimension, Double> given) {
        ClosureOutcome outcome = Closure.of(given);
        assertThat(outcome).isInstanceOf(ClosureOutcome.Closed.class);
        return (ClosureOutcome.Closed) outcome;
    }

    @ParameterizedTest
    @MethodSource("drawnFrom")
    void whatBuildersDrawFromGivesEveryDemoFrameBack(Set<Dimension> set) {
        assertThat(DemoFrames.all()).allSatisfy(row -> {
            FrameGeometry frame = row.geometry();
            ClosureOutcome.Closed closed = closed(taken(set, frame));
            assertThat(farthest(closed.geometry(), frame)).as(row.name()).isLessThan(1e-7);
            assertThat(closed.surplus()).isEmpty();
        });
    }

    /**
     * Of all 2.7 million choices of thirteen a seeded draw of those that suffice is closed on frames of the workshop; the
     * frame is among the solutions, and each solution fits the set.
     */
    @Test
    void everyKindOfSufficientSetGivesTheFrameBack() {
        List<FrameGeometry> frames =
                DemoFrames.all().map(DemoFrames.Row::geometry).toList();
        Random draw = new Random(20261130);
        List<String> astray = new ArrayList<>();
        int sufficient = 0;
        int tried = 0;
        int easings = 0;
        for (int bits = (1 << 12) - 1; bits < 1 << 24; bits = next(bits)) {
            int places = bits & (1 << 9) - 1 | bits >>> 9 << 10 | 1 << Dimension.SEAT_TUBE.ordinal();
            Set<Dimension> set = set(places);
            if (draw.nextInt(40) != 0 || !Independence.of(set).isComplete()) {
                continue;
            }
            sufficient++;
            if (!ClosurePlan.of(places).isComplete()) {
                easings++;
            } else if (draw.nextInt(3) == 0) {
                tried++;
                FrameGeometry frame = frames.get(draw.nextInt(frames.size()));
                Map<Dimension, Double> given = taken(set, frame);
                if (!(Closure.of(given) instanceof ClosureOutcome.Closed closed) || !isFound(frame, closed, given)) {
                    astray.add(set + " of " + frame.layout());
                }
            }
        }
        assertThat(sufficient).isGreaterThan(4000);
        assertThat(easings).isLessThan(sufficient / 250);
        assertThat(tried).isGreaterThan(1000);
        assertThat(astray).isEmpty();
    }

    /** Frames nobody drew, from every set that builders draw from: the frame is among the solutions. */
    @ParameterizedTest
    @MethodSource("drawnFrom")
    void whatBuildersDrawFromGivesFramesBackThatNobodyDrew(Set<Dimension> set) {
        assertThat(RandomFrames.frames(300, 20261207)).allSatisfy(frame -> {
            Map<Dimension, Double> given = taken(set, frame);
            assertThat(isFound(frame, closed(given), given)).isTrue();
        });
    }

    private static boolean isFound(FrameGeometry frame, ClosureOutcome.Closed closed, Map<Dimension, Double> given) {
        List<FrameGeometry> all = new ArrayList<>(closed.others());
        all.add(closed.geometry());
        return all.stream().anyMatch(one -> farthest(one, frame) < 1e-4)
                && all.stream()
                        .allMatch(one -> given.entrySet().stream()
                                .allMatch(entry -> Math.abs(entry.getKey().of(one) - entry.getValue()) < 1e-6));
    }

    private static Set<Dimension> set(int places) {
        Set<Dimension> set = EnumSet.noneOf(Dimension.class);
        for (Dimension dimension : Dimension.values()) {
            if ((places >> dimension.ordinal() & 1) == 1) {
                set.add(dimension);
            }
        }
        return set;
    }

    /** The next number with as many bits (R. W. Gosper, HAKMEM item 175, 1972). */
    private static int next(int bits) {
        int low = bits & -bits;
        int ripple = bits + low;
        return ((ripple ^ bits) >>> 2) / low | ripple;
    }

    /** Worked by hand: 122 mm and 541 mm of steering at 65.5° end 58 − 18.25 + 603.30 = 643.06 mm above the shell. */
    @Test
    void aContradictionShowsItsResidualAndWhatCouldBeGivenUp() {
        Map<Dimension, Double> given = taken(layout(), o101());
        given.put(Dimension.STACK, 640.0);
        ClosureOutcome outcome = Closure.of(given);
        assertThat(outcome).isInstanceOfSatisfying(ClosureOutcome.OverDetermined.class, over -> {
            assertThat(over.surplus()).hasSize(1);
            assertThat(over.surplus().get(0).dimension()).isEqualTo(Dimension.STACK);
            assertThat(over.surplus().get(0).residual()).isCloseTo(-3.06, within(0.005));
            assertThat(over.surplus().get(0).words())
                    .isEqualTo("The stack is given as 640 mm; the others make it 643.1 mm.");
            Map<Dimension, Double> becomes = new EnumMap<>(Dimension.class);
            over.offers().forEach(offer -> becomes.put(offer.dimension(), offer.becomes()));
            assertThat(becomes)
                    .containsOnlyKeys(
                            Dimension.HEAD_ANGLE,
                            Dimension.HEAD_TUBE,
                            Dimension.LOWER_STACK,
                            Dimension.FORK_LENGTH,
                            Dimension.FORK_OFFSET,
                            Dimension.SHELL_DROP,
                            Dimension.STACK);
            assertThat(becomes.get(Dimension.HEAD_TUBE)).isCloseTo(106.6, TENTH);
            assertThat(becomes.get(Dimension.STACK)).isCloseTo(643.06, within(0.005));
            assertThat(becomes.get(Dimension.SHELL_DROP)).isCloseTo(58 - 3.0578, within(0.0001));
            assertThat(over.offers().get(0).dimension()).isEqualTo(Dimension.STACK);
        });
    }

    @Test
    void whatIsGivenTwiceAndAgreesIsComparedAndClosed() {
        Map<Dimension, Double> given = taken(layout(), o101());
        given.put(Dimension.STACK, 643.0);
        given.put(Dimension.WHEELBASE, 1201.0);
        ClosureOutcome.Closed closed = closed(given);
        assertThat(closed.surplus())
                .extracting(ClosureOutcome.Surplus::dimension)
                .containsExactly(Dimension.STACK, Dimension.WHEELBASE);
        assertThat(closed.surplus().get(0).residual()).isCloseTo(-0.0578, within(0.00005));
        assertThat(Closure.of(given, new Closure.Agreement(0.05, 0.001)))
                .isInstanceOf(ClosureOutcome.OverDetermined.class);
    }

    @ParameterizedTest
    @EnumSource(
            value = Dimension.class,
            names = {"STACK", "TRAIL", "WHEELBASE", "EFFECTIVE_TOP_TUBE", "FRONT_CENTRE"})
    void eachDimensionThatIsNamedAsMissingCompletesTheFrame(Dimension beyond) {
        Map<Dimension, Double> all = taken(EnumSet.allOf(Dimension.class), o101());
        for (Dimension without : layout()) {
            Map<Dimension, Double> given = taken(layout(), o101());
            given.remove(without);
            ClosureOutcome outcome = Closure.of(given);
            assertThat(outcome).isInstanceOfSatisfying(ClosureOutcome.UnderDetermined.class, under -> {
                assertThat(under.missing()).hasSize(1);
                assertThat(under.missing().get(0).count()).isEqualTo(1);
                assertThat(under.missing().get(0).among()).contains(without);
                for (Dimension missing : Dimension.values()) {
                    Map<Dimension, Double> more = new EnumMap<>(given);
                    more.put(missing, all.get(missing));
                    assertThat(Closure.of(more) instanceof ClosureOutcome.Closed)
                            .as("%s for %s", missing, without)
                            .isEqualTo(under.missing().get(0).among().contains(missing));
                }
            });
        }
        Map<Dimension, Double> onlyOne = new EnumMap<>(Dimension.class);
        onlyOne.put(beyond, all.get(beyond));
        assertThat(Closure.of(onlyOne))
                .isInstanceOfSatisfying(
                        ClosureOutcome.UnderDetermined.class,
                        under -> assertThat(under.missing().stream()
                                        .mapToInt(ClosureOutcome.Missing::count)
                                        .sum())
                                .isEqualTo(12));
    }

    @Test
    void whatIsMissingIsSaidInWords() {
        Map<Dimension, Double> given = taken(layout(), o101());
        given.remove(Dimension.SEAT_TUBE);
        given.remove(Dimension.HEAD_TUBE);
        assertThat(Closure.of(given))
                .isInstanceOfSatisfying(
                        ClosureOutcome.UnderDetermined.class,
                        under -> assertThat(under.words())
                                .isEqualTo(
                                        "Still missing: one of head tube, stack, front centre, level front centre, wheelbase,"
                                                + " effective top tube; and seat tube."));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "HEAD_ANGLE | 655 | | headAngle | The head angle of 655° is not between 0° and 90°.",
                "HEAD_ANGLE | 0.001 | | headAngle | The head angle of 0° is within 1° of lying flat or standing upright: no frame is computed from it.",
                "SEAT_ANGLE | 89.5 | | seatAngle | The seat angle of 89.5° is within 1° of lying flat or standing upright: no frame is computed from it.",
                "SEAT_ANGLE | 90 | | seatAngle | The seat angle of 90° is not between 0° and 90°.",
                "SEAT_ANGLE | -74 | | seatAngle | The seat angle of -74° is not between 0° and 90°.",
                "REACH | NaN | | reach | The reach is no number.",
                "HEAD_TUBE | Infinity | | headTube | The head tube is no number.",
                "SHELL_DROP | -Infinity | | shellDrop | The shell drop is no number.",
                "FORK_LENGTH | 1e308 | | forkLength | The fork length is longer than 100 m.",
                "REAR_WHEEL_RADIUS | 0 | | rearWheelRadius | The rear wheel radius of 0 mm is not above 0.",
                "LOWER_STACK | -1 | | lowerStack | The lower headset stack of -1 mm is below 0.",
                "CHAINSTAY | 50 | | chainstay | The chainstay of 50 mm is shorter than the drop below the rear axle of 58 mm.",
                "CHAINSTAY | 58 | | chainstay | With the chainstay of 58 mm the level rear centre would come to 0 mm, which cannot be.",
                "STACK | 500 | HEAD_TUBE | stack | With the stack of 500 mm the head tube would come to -47.2 mm, which cannot be.",
                "STACK | 900 | HEAD_ANGLE | stack | No head angle gives a stack of 900 mm with the other figures; it would lie between 14 mm and 721 mm.",
                "FRONT_CENTRE | 50 | REACH | frontCentre | The front centre of 50 mm is shorter than the shell drop of 58 mm.",
                "WHEELBASE | 400 | CHAINSTAY | wheelbase | With the wheelbase of 400 mm the level rear centre would come to -373 mm, which cannot be.",
                "WHEELBASE | 2000 | HEAD_ANGLE | wheelbase | No head angle gives a level front centre of 1571.9 mm, which follows from the wheelbase of 2000 mm, with the other figures; it would lie between 502 mm and 1122.5 mm.",
            })
    void whatCannotBeIsSaidInASentenceThatNamesTheField(
            Dimension dimension, double value, Dimension without, String input, String words) {
        Map<Dimension, Double> given = taken(layout(), o101());
        given.put(dimension, dimension.isAngle() ? Math.toRadians(value) : value);
        given.remove(without);
        assertThat(Closure.of(given)).isEqualTo(new ClosureOutcome.Impossible(List.of(new Answer.Gap(input, words))));
    }

    @Test
    void everyBadFigureIsNamedAtOnce() {
        Map<Dimension, Double> given = taken(layout(), o101());
        given.put(Dimension.HEAD_ANGLE, Double.NaN);
        given.put(Dimension.CHAINSTAY, -1.0);
        assertThat(Closure.of(given))
                .isInstanceOfSatisfying(
                        ClosureOutcome.Impossible.class,
                        impossible -> assertThat(impossible.gaps())
                                .extracting(Answer.Gap::input)
                                .containsExactly("headAngle", "chainstay"));
    }

    private static FrameGeometry o101() {
        return DemoFrames.all()
                .filter(row -> row.name().equals("O-101"))
                .findAny()
                .orElseThrow()
                .geometry();
    }
}
