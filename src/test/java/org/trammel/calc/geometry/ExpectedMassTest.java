package org.trammel.calc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.trammel.calc.units.Answer;

/** Against the invented workshop's frames, computed by a script written apart from this project, and against integrals. */
class ExpectedMassTest {

    private static final Offset<Double> ALL_DIGITS = within(1e-12);
    private static final Map<String, Double> DENSITY =
            Map.of("6061", 2700.0, "7005", 2780.0, "25CrMo4", 7850.0, "Ti3-2.5", 4480.0);

    @ParameterizedTest
    @MethodSource("org.trammel.calc.geometry.DemoFrames#all")
    void everyPartOfEveryFrameWeighsWhatTheScriptFound(DemoFrames.Row frame) {
        ExpectedMass expected = value(ExpectedMass.of(parts(frame), 0.05));
        for (ExpectedMass.Line line : expected.lines()) {
            assertThat(line.mass_kg())
                    .as(line.part().name())
                    .isCloseTo(frame.number("mass_" + line.part().name()), ALL_DIGITS);
        }
        assertThat(expected.mass_kg()).isCloseTo(frame.number("mass_total"), ALL_DIGITS);
    }

    /** Named as the columns are. Lengths are those of the blanks, of stays those in space; usual stays are 22 and 18 mm. */
    static List<FramePart> parts(DemoFrames.Row frame) {
        double density = DENSITY.get(frame.columns().get("metal"));
        List<FramePart> parts = new ArrayList<>();
        parts.add(new FramePart.Bored(
                "HT",
                frame.number("head_tube_outside_mm"),
                frame.number("head_tube_bore_mm"),
                frame.number("head_tube_mm"),
                density));
        parts.add(new FramePart.Bored(
                "BB",
                frame.number("shell_outside_mm"),
                frame.number("shell_bore_mm"),
                frame.number("shell_width_mm"),
                density));
        parts.add(tube(frame, "DT", "down_tube_outside_mm", 0, "DT_blank", 1, density));
        parts.add(tube(frame, "TT", "top_tube_outside_mm", 0, "TT_blank", 1, density));
        parts.add(tube(frame, "ST", "seat_tube_outside_mm", 0, "ST_blank", 1, density));
        parts.add(new FramePart.Weld("weld", frame.number("weld_mass_kg", 0.045), 0.01));
        if (frame.has("mass_CS")) {
            parts.add(tube(frame, "CS", "chainstay_outside_mm", 22, "CS_len3d", 2, density));
            parts.add(tube(frame, "SS", "seatstay_outside_mm", 18, "SS_len3d", 2, density));
            parts.add(new FramePart.Pieces("dropouts", frame.number("dropout_mass_kg"), 0.005, 2));
            parts.add(new FramePart.Pieces("bridge_etc", frame.number("small_parts_mass_kg", 0.045), 0, 3));
        } else {
            parts.add(new FramePart.Pieces("pivot_hw", frame.number("pivot_mass_kg"), 0.005, 1));
            parts.add(new FramePart.Pieces("bits", frame.number("small_parts_mass_kg", 0.05), 0, 3));
        }
        return parts;
    }

    private static FramePart.Tube tube(
            DemoFrames.Row frame, String name, String outside, double usual, String length, int count, double density) {
        return FramePart.Tube.plain(
                name,
                usual == 0 ? frame.number(outside) : frame.number(outside, usual),
                frame.number(name.toLowerCase(java.util.Locale.ROOT) + "_wall_mm"),
                frame.number(length),
                density,
                count);
    }

    /** Worked by hand for the first frame: walls 10,9 g, weld 10 g, dropouts 5 g, together 15,6 g on 1678 g. */
    @Test
    void theUncertaintyIsThatOfTheWallsTheWeldAndTheDropouts() {
        ExpectedMass expected =
                value(ExpectedMass.of(parts(DemoFrames.all().findFirst().orElseThrow()), 0.05));
        double walls = Math.sqrt(expected.lines().stream()
                .filter(line -> line.part() instanceof FramePart.Tube)
                .mapToDouble(line -> line.u_kg() * line.u_kg())
                .sum());
        assertThat(walls * 1000).isCloseTo(10.9, within(0.05));
        assertThat(expected.u_kg() * 1000).isCloseTo(15.6, within(0.05));
        assertThat(expected.mass_kg() * 1000).isCloseTo(1678, within(0.5));
    }

    @Test
    void wallsOfAPairAreOffTogether() {
        double one = value(ExpectedMass.of(List.of(FramePart.Tube.plain("stay", 22, 1.6, 400, 2700, 1)), 0.05))
                .u_kg();
        double pair = value(ExpectedMass.of(List.of(FramePart.Tube.plain("stays", 22, 1.6, 400, 2700, 2)), 0.05))
                .u_kg();
        assertThat(pair).isCloseTo(2 * one, ALL_DIGITS);
    }

    /** The uncertainty against the change of mass when the wall grows about its mean diameter, by differences. */
    @Test
    void theUncertaintyFollowsTheWallAtTheMeanDiameter() {
        Random random = new Random(20260301);
        for (int i = 0; i < 300; i++) {
            double outside = 15 + 50 * random.nextDouble();
            double wall = 0.5 + 2.5 * random.nextDouble();
            double length = 100 + 800 * random.nextDouble();
            double h = 1e-4;
            double more = mass(outside + h, wall + h, length);
            double less = mass(outside - h, wall - h, length);
            double u = value(ExpectedMass.of(
                            List.of(FramePart.Tube.plain("tube", outside, wall, length, 2700, 1)), 0.05))
                    .u_kg();
            assertThat(u).isCloseTo((more - less) / (2 * h) * 0.05 / Math.sqrt(3), within(1e-9));
        }
    }

    private static double mass(double outside, double wall, double length) {
        return value(ExpectedMass.of(List.of(FramePart.Tube.plain("tube", outside, wall, length, 2700, 1)), 0))
                .mass_kg();
    }

    /** A drawn tube cut into two thousand rings, each a difference of two circles. */
    @Test
    void aButtedTubeWeighsWhatItsRingsWeigh() {
        Random random = new Random(20260302);
        for (int i = 0; i < 50; i++) {
            double outside = 25 + 30 * random.nextDouble();
            double thick = 1.2 + random.nextDouble();
            double thin = 0.6 + 0.5 * random.nextDouble();
            double[] lengths = {60 + 100 * random.nextDouble(), 40, 300 * random.nextDouble() + 100, 40, 70};
            double[] from = {thick, thick, thin, thin, thick};
            double[] to = {thick, thin, thin, thick, thick};
            List<FramePart.Section> sections = new ArrayList<>();
            double rings = 0;
            for (int s = 0; s < lengths.length; s++) {
                sections.add(new FramePart.Section(from[s], to[s], lengths[s]));
                for (int ring = 0; ring < 2000; ring++) {
                    double wall = from[s] + (to[s] - from[s]) * (ring + 0.5) / 2000;
                    double bore = outside - 2 * wall;
                    rings += Math.PI / 4 * (outside * outside - bore * bore) * lengths[s] / 2000 * 7850e-9;
                }
            }
            ExpectedMass expected =
                    value(ExpectedMass.of(List.of(new FramePart.Tube("down tube", outside, sections, 7850, 1)), 0.05));
            assertThat(expected.mass_kg()).isCloseTo(rings, within(1e-7));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0 | 1.4 | 741 | 2700 | 1 | outside | The outside of the down tube, 0 mm, is not above 0.",
                "-42 | 1.4 | 741 | 2700 | 1 | outside | The outside of the down tube, -42 mm, is not above 0.",
                "NaN | 1.4 | 741 | 2700 | 1 | outside | The outside of the down tube, no number, is not above 0.",
                "42 | 0 | 741 | 2700 | 1 | wall | The wall of the down tube, 0 mm, is not above 0.",
                "42 | NaN | 741 | 2700 | 1 | wall | The wall of the down tube, no number, is not above 0.",
                "42 | 21 | 741 | 2700 | 1 | wall | The wall of the down tube, 21 mm, is not below half its outside, 21 mm.",
                "42 | 1.4 | -1 | 2700 | 1 | length | The length of the down tube, -1 mm, is not above 0.",
                "42 | 1.4 | Infinity | 2700 | 1 | length | The length of the down tube, no number, is not above 0.",
                "42 | 1.4 | 741 | 0 | 1 | density | The density of the down tube, 0 kg/m³, is not above 0.",
                "42 | 1.4 | 741 | 2700 | 0 | count | The count of the down tube, 0, is not above 0.",
                "1e308 | 1.4 | 1e308 | 2700 | 1 | parts | The parts together come to a mass that is no number: a size is far too large.",
            })
    void aTubeThatCannotBeIsNamed(
            double outside, double wall, double length, double density, int count, String input, String words) {
        FramePart.Tube tube = FramePart.Tube.plain("down tube", outside, wall, length, density, count);
        assertThat(gaps(ExpectedMass.of(List.of(tube), 0.05))).contains(new Answer.Gap(input, words));
    }

    @Test
    void otherPartsThatCannotBeAreNamed() {
        assertThat(gaps(ExpectedMass.of(List.of(), 0.05)))
                .containsExactly(new Answer.Gap("parts", "No part is given: there is nothing to weigh."));
        assertThat(gaps(ExpectedMass.of(List.of(new FramePart.Tube("down tube", 42, List.of(), 2700, 1)), 0.05)))
                .containsExactly(new Answer.Gap("sections", "Nothing says how long the down tube is."));
        assertThat(gaps(ExpectedMass.of(List.of(new FramePart.Bored("shell", 42, 42, 73, 2700)), 0.05)))
                .containsExactly(
                        new Answer.Gap("bore", "The bore of the shell, 42 mm, leaves nothing of its outside, 42 mm."));
        assertThat(gaps(ExpectedMass.of(
                        List.of(new FramePart.Bored("shell", Double.NaN, Double.NaN, Double.NaN, Double.NaN)), 0.05)))
                .extracting(Answer.Gap::input)
                .containsExactly("outside", "length", "density", "bore");
        assertThat(gaps(ExpectedMass.of(List.of(new FramePart.Pieces("dropouts", -1, Double.NaN, 0)), 0.05)))
                .extracting(Answer.Gap::input)
                .containsExactly("mass", "u", "count");
        assertThat(gaps(ExpectedMass.of(List.of(new FramePart.Weld("weld", Double.NaN, -1)), Double.NaN)))
                .extracting(Answer.Gap::words)
                .containsExactly(
                        "The half width of the walls, no number, is not 0 or above.",
                        "The mass of the weld, no number, is not 0 or above.",
                        "The uncertainty of the mass of the weld, -1 kg, is not 0 or above.");
    }

    static <T> T value(Answer<T> answer) {
        assertThat(answer).isInstanceOf(Answer.Determined.class);
        return ((Answer.Determined<T>) answer).value();
    }

    static List<Answer.Gap> gaps(Answer<?> answer) {
        assertThat(answer).isInstanceOf(Answer.NotDeterminable.class);
        return ((Answer.NotDeterminable<?>) answer).gaps();
    }

    /** A single taper from 2 to 1, whose halves do not make up for each other: the integral of π(D − t)t by hand. */
    @Test
    void aTaperThatIsNotMadeUpForWeighsItsIntegral() {
        ExpectedMass expected = value(ExpectedMass.of(
                List.of(new FramePart.Tube("stay", 40, List.of(new FramePart.Section(2, 1, 50)), 1000, 1)), 0.05));
        assertThat(expected.mass_kg()).isCloseTo(Math.PI * 50 * (40 * 1.5 - 7 / 3.0) * 1e-6, ALL_DIGITS);
    }
}
