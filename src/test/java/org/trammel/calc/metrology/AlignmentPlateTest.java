package org.trammel.calc.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.trammel.calc.metrology.AlignmentPointsTest.alignment;
import static org.trammel.calc.metrology.AlignmentPointsTest.measured;
import static org.trammel.calc.metrology.AlignmentPointsTest.value;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.calc.metrology.PlateReadings.PlateDatum;

/**
 * A worked example of the trade, computed independently of this project and re-computed here by hand: seat tube 150,12 at
 * 100 and 150,42 at 400 mm, head tube 150,31 and 149,88 over 90 mm; each reading with 0,012 gauge, 0,030 repeatability,
 * 0,006 plate, 0,030 clamp and 0,040 ovality, all its own. Tolerance of the twist ±0,30°, guard band 1,65 u.
 *
 * <pre>
 * u per reading √(0,012² + 0,030² + 0,006² + 0,030² + 0,040²) = 0,0598    without ovality 0,0445
 * lean of the seat tube 0,30 / 300 = 0,0573°         u √2 · 0,060 / 300 = 0,016°
 * lean of the head tube −0,43 / 90 = −0,2737°        u √2 · 0,060 / 90  = 0,054°
 * twist −0,331°                                      u √(0,054² + 0,016²) = 0,056°
 * on the mandrel of 300 mm                           u √2 · 0,0445 / 300 = 0,012°, of the twist 0,020°
 * </pre>
 */
class AlignmentPlateTest {

    static final double HEAD_ANGLE = Math.toRadians(65.5);
    static final double SEAT_ANGLE = Math.toRadians(74.5);
    private static final Judging TWIST =
            Judging.guarded(Limits.between(new BigDecimal("-0.30"), new BigDecimal("0.30")));

    @Test
    void theWorkedExampleComesOutToItsLastDigit() {
        Alignment alignment = alignment(example(head90(), true));
        assertDegrees(alignment, Deviation.SEAT_TUBE_LEAN, 0.0573, 0.00005, 0.016, 0.0005);
        assertDegrees(alignment, Deviation.HEAD_TUBE_LEAN, -0.2737, 0.00005, 0.054, 0.0005);
        assertDegrees(alignment, Deviation.TWIST, -0.331, 0.0005, 0.056, 0.0005);
        ConformityDecision decision = TWIST.judge(measured(alignment, Deviation.TWIST));
        assertThat(decision.word()).isEqualTo("undecided");
        assertThat(decision.basis().conformingTo()).isEqualByComparingTo("0.207");
        assertThat(decision.basis().notConformingAbove()).isEqualByComparingTo("0.393");
    }

    /** Mandrel 150,45 and 148,95 over 300 mm: −0,286°, twist −0,344°, not conforming beyond 0,333. */
    @Test
    void theMandrelDecidesWhatTheShortBaseLeftOpen() {
        Alignment alignment = alignment(example(mandrel(), true));
        assertDegrees(alignment, Deviation.HEAD_TUBE_LEAN, -0.286, 0.0005, 0.012, 0.0005);
        assertDegrees(alignment, Deviation.TWIST, -0.344, 0.0005, 0.020, 0.0005);
        MeasuredDeviation twist = measured(alignment, Deviation.TWIST);
        assertThat(TWIST.judge(twist).word()).isEqualTo("not conforming");
        double g = 1.65 * twist.judgedUncertainty().doubleValue();
        assertThat(0.30 - g).isCloseTo(0.267, within(0.0005));
        assertThat(0.30 + g).isCloseTo(0.333, within(0.0005));
    }

    /** Further rows of the same table, heights and results as computed independently: seat tube at 100 and 400 mm. */
    @ParameterizedTest
    @CsvSource({
        "150.10, 150.34, 150.22, 149.90, 90, 0.046, -0.204, -0.250, undecided",
        "150.12, 150.42, 150.31, 149.88, 90, 0.057, -0.274, -0.331, undecided",
        "150.12, 150.42, 150.45, 148.95, 300, 0.057, -0.286, -0.344, not conforming",
        "150.05, 150.11, 150.02, 149.80, 300, 0.011, -0.042, -0.053, conforming",
        "150.00, 150.09, 150.30, 149.10, 300, 0.017, -0.229, -0.246, conforming",
        "149.98, 150.01, 150.10, 149.96, 300, 0.006, -0.027, -0.032, conforming"
    })
    void readingsOfATableReduceToItsResults(
            double seat100,
            double seat400,
            double lower,
            double upper,
            double base,
            double seatLean,
            double headLean,
            double twist,
            String word) {
        boolean tube = base < 300;
        List<AxisStation> head =
                headAt(base / 2, reading("HT lower", lower, tube, true), reading("HT upper", upper, tube, true));
        List<AxisStation> seat = List.of(
                AxisStation.along(0, 0, SEAT_ANGLE, 100, CentreHeight.at(reading("ST low", seat100, true, true))),
                AxisStation.along(0, 0, SEAT_ANGLE, 400, CentreHeight.at(reading("ST high", seat400, true, true))));
        Alignment alignment = alignment(example(head, true).withSeatTube(seat));
        assertThat(Math.toDegrees(value(alignment, Deviation.SEAT_TUBE_LEAN))).isCloseTo(seatLean, within(0.00051));
        assertThat(Math.toDegrees(value(alignment, Deviation.HEAD_TUBE_LEAN))).isCloseTo(headLean, within(0.00051));
        assertThat(Math.toDegrees(value(alignment, Deviation.TWIST))).isCloseTo(twist, within(0.00051));
        assertThat(TWIST.judge(measured(alignment, Deviation.TWIST)).word()).isEqualTo(word);
    }

    /** As the upper end rises, the verdict goes once through the field: from below it, over both bands, beyond it. */
    @Test
    void theVerdictIsMonotoneInTheReading() {
        List<String> passed = new ArrayList<>();
        for (int step = 0; step <= 240; step++) {
            List<AxisStation> head = headAt(
                    45, reading("HT lower", 150.31, true, true), reading("HT upper", 149.2 + 0.01 * step, true, true));
            String word = TWIST.judge(measured(alignment(example(head, true)), Deviation.TWIST))
                    .word();
            if (passed.isEmpty() || !passed.get(passed.size() - 1).equals(word)) {
                passed.add(word);
            }
        }
        assertThat(passed).containsExactly("not conforming", "undecided", "conforming", "undecided", "not conforming");
    }

    /** Probabilities of the example: 29 % at 0,331 and 81 % at 0,25 on the short base, 99 % at 0,25 on the mandrel. */
    @Test
    void theProbabilitiesOfTheExampleFollowFromItsUncertainties() {
        Limits limits = TWIST.limits();
        BigDecimal shortBase =
                measured(alignment(example(head90(), true)), Deviation.TWIST).judgedUncertainty();
        BigDecimal longBase =
                measured(alignment(example(mandrel(), true)), Deviation.TWIST).judgedUncertainty();
        assertThat(percent("-0.331", limits, shortBase)).isEqualTo("29 %");
        assertThat(percent("0.25", limits, shortBase)).isEqualTo("81 %");
        assertThat(percent("0.25", limits, longBase)).isEqualTo("over 99 %");
    }

    private static String percent(String y, Limits limits, BigDecimal u) {
        return ((ConformityProbability.Determined) ConformityProbability.of(new BigDecimal(y), limits, u)).words();
    }

    /** u² of a lean by hand: independent √2 u / L; gauge and clamp shared by both readings leave the difference. */
    @Test
    void whatReadingsShareFallsOutOfTheirDifference() {
        Alignment own = alignment(example(head90(), true));
        Alignment shared = alignment(example(head90(), false));
        Budget ofOwn = measured(own, Deviation.TWIST).statedBudget();
        Budget ofShared = measured(shared, Deviation.TWIST).statedBudget();
        assertThat(ofShared.uIndependent()).isCloseTo(ofOwn.u(), within(1e-9));
        double left = Math.sqrt(0.030 * 0.030 + 0.006 * 0.006 + 0.040 * 0.040);
        double byHand = Math.toDegrees(Math.sqrt(2) * left * Math.hypot(1 / 90.0, 1 / 300.0));
        assertThat(ofShared.u()).isCloseTo(byHand, within(2e-6));
        assertThat(line(ofShared, ErrorKind.GAUGE).u()).isCloseTo(0, within(1e-6));
        assertThat(line(ofShared, ErrorKind.GAUGE).uIndependent())
                .isCloseTo(Math.toDegrees(Math.sqrt(2) * 0.012 * Math.hypot(1 / 90.0, 1 / 300.0)), within(2e-6));
        assertThat(ofShared.lines().stream().mapToDouble(Budget.Line::share).sum())
                .isCloseTo(1, within(1e-12));
        assertThat(ofShared.lines().stream().mapToDouble(l -> l.u() * l.u()).sum())
                .isCloseTo(ofShared.u() * ofShared.u(), within(1e-12));
    }

    /** Where all doubt is shared and falls out nothing is known of what is left: no certainty, but no verdict. */
    @Test
    void anUncertaintyThatFallsOutAltogetherGivesNoVerdict() {
        PlateReadings example = example(head90(), true);
        List<Contribution> gaugeAlone = List.of(Contribution.shared(ErrorKind.GAUGE, 0.012, "HG-1"));
        List<List<AxisStation>> tubes = new ArrayList<>();
        for (List<AxisStation> tube : List.of(example.headTube(), example.seatTube())) {
            tubes.add(tube.stream()
                    .map(s -> new AxisStation(
                            s.x_mm(),
                            s.y_mm(),
                            CentreHeight.at(new RawReading(
                                    s.height().top().name(), s.height().top().value_mm(), "HG-1", gaugeAlone))))
                    .toList());
        }
        PlateReadings readings = example.withHeadTube(tubes.get(0)).withSeatTube(tubes.get(1));
        MeasuredDeviation twist = measured(alignment(readings), Deviation.TWIST);
        assertThat(twist.budget().u()).isZero();
        assertThat(twist.budget().uIndependent()).isPositive();
        assertThat(TWIST.judge(twist).word()).isEqualTo("gauge unfit");
    }

    /** Twist and seat-tube lean have the seat tube in common: r = −u(ST) / u(twist), elementary. */
    @Test
    void twistAndLeanAreCorrelatedByTheTubeTheyShare() {
        Alignment alignment = alignment(example(head90(), true));
        double seat = measured(alignment, Deviation.SEAT_TUBE_LEAN).budget().u();
        double twist = measured(alignment, Deviation.TWIST).budget().u();
        assertThat(alignment.correlation(Deviation.SEAT_TUBE_LEAN, Deviation.TWIST))
                .isCloseTo(-seat / twist, within(1e-6));
        assertThat(alignment.correlation(Deviation.SEAT_TUBE_LEAN, Deviation.HEAD_TUBE_LEAN))
                .isZero();
    }

    /** A post that is out by half a degree leans both tubes and twists neither but by what their directions differ. */
    @Test
    void theTiltOfThePostIsInTheLeansAndHardlyInTheTwist() {
        PlateReadings readings = example(head90(), true);
        PlateDatum.Post post = (PlateDatum.Post) readings.datum();
        PlateReadings tilting = PlateReadings.ofTubes(
                new PlateDatum.Post(post.centre(), Math.toRadians(0.5)), readings.headTube(), readings.seatTube());
        Alignment alignment = alignment(tilting);
        assertThat(Math.toDegrees(
                        measured(alignment, Deviation.SEAT_TUBE_LEAN).budget().u()))
                .isCloseTo(Math.hypot(0.5, 0.01616), within(1e-4));
        // a · n for both: the difference of two unit vectors 9° apart has the length 2 sin 4,5°
        double carried = 0.5 * 2 * Math.sin(Math.toRadians(4.5));
        assertThat(line(measured(alignment, Deviation.TWIST).statedBudget(), ErrorKind.POST)
                        .u())
                .isCloseTo(carried, within(1e-4));
        assertThat(line(measured(alignment, Deviation.TWIST).statedBudget(), ErrorKind.POST)
                        .uIndependent())
                .isCloseTo(carried, within(1e-4));
    }

    private static void assertDegrees(
            Alignment alignment, Deviation what, double value, double half, double u, double halfU) {
        assertThat(Math.toDegrees(value(alignment, what))).as(what.words()).isCloseTo(value, within(half));
        assertThat(measured(alignment, what).statedBudget().u())
                .as("u of " + what.words())
                .isCloseTo(u, within(halfU));
    }

    static Budget.Line line(Budget budget, ErrorKind kind) {
        return budget.lines().stream().filter(l -> l.kind() == kind).findFirst().orElseThrow();
    }

    static PlateReadings example(List<AxisStation> head, boolean allOwn) {
        List<AxisStation> seat = List.of(
                AxisStation.along(0, 0, SEAT_ANGLE, 100, CentreHeight.at(reading("ST at 100", 150.12, true, allOwn))),
                AxisStation.along(0, 0, SEAT_ANGLE, 400, CentreHeight.at(reading("ST at 400", 150.42, true, allOwn))));
        PlateDatum post = new PlateDatum.Post(CentreHeight.at(reading("shell", 150, false, allOwn)), 0);
        return PlateReadings.ofTubes(
                post,
                allOwn
                        ? head
                        : head.stream()
                                .map(s -> new AxisStation(
                                        s.x_mm(),
                                        s.y_mm(),
                                        CentreHeight.at(reading(
                                                s.height().top().name(),
                                                s.height().top().value_mm(),
                                                true,
                                                false))))
                                .toList(),
                seat);
    }

    static List<AxisStation> head90() {
        return headAt(45, reading("HT lower", 150.31, true, true), reading("HT upper", 149.88, true, true));
    }

    static List<AxisStation> mandrel() {
        return headAt(
                150, reading("mandrel lower", 150.45, false, true), reading("mandrel upper", 148.95, false, true));
    }

    static List<AxisStation> headAt(double half_mm, RawReading lower, RawReading upper) {
        double x = 458 + 60 * Math.cos(HEAD_ANGLE);
        double y = 643.1 - 60 * Math.sin(HEAD_ANGLE);
        return List.of(
                AxisStation.along(x, y, HEAD_ANGLE, -half_mm, CentreHeight.at(lower)),
                AxisStation.along(x, y, HEAD_ANGLE, half_mm, CentreHeight.at(upper)));
    }

    static RawReading reading(String name, double value_mm, boolean tube, boolean allOwn) {
        List<Contribution> all = new ArrayList<>(List.of(
                new Contribution(ErrorKind.GAUGE, 0.012, allOwn ? null : "HG-1"),
                Contribution.own(ErrorKind.REPEATABILITY, 0.030),
                Contribution.own(ErrorKind.PLATE, 0.006),
                new Contribution(ErrorKind.CLAMP, 0.030, allOwn ? null : "first")));
        if (tube) {
            all.add(Contribution.own(ErrorKind.OVALITY, 0.040));
        }
        return new RawReading(name, value_mm, "HG-1", all);
    }
}
