package org.trammel.shop.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.calc.metrology.Deviation;
import org.trammel.calc.metrology.ErrorKind;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.inspection.ColdSets;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.inspection.Verdict;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.travellers.CharacteristicState;

/**
 * Raw heights to verdicts. What is expected is worked out here by the plain formulas of the trade: lean = asin(Δh / l) to
 * the drive side, twist = lean of the head tube less that of the seat tube; uncertainties by the root of the sum of squares
 * (JCGM 100:2008, 5.1.2), the gauge's left out of differences of one gauge's heights since it falls out of them (F.1.2.3).
 */
class TableReductionTest extends OnThePlate {

    /** Repeatability, plate, clamping and ovality as the program ships them, mm; common practice. */
    private static final double TUBE_MM = Math.sqrt(0.030 * 0.030 + 0.006 * 0.006 + 0.030 * 0.030 + 0.040 * 0.040);

    /** The same on a mandrel, whose form is in the place of the ovality. */
    private static final double MANDREL_MM = Math.sqrt(0.030 * 0.030 + 0.006 * 0.006 + 0.030 * 0.030 + 0.005 * 0.005);

    @Autowired
    private TableSheets sheets;

    @Autowired
    private Readings readings;

    @Autowired
    private ColdSets coldSets;

    private static double lean_deg(double low, double high, double apart) {
        // The stations lie so far apart along the axis in the side view; the heights differ at right angles to it.
        return Math.toDegrees(Math.atan((high - low) / apart));
    }

    private static double u_deg(double head_mm, double headBase, double seat_mm, double seatBase) {
        return Math.toDegrees(Math.hypot(Math.sqrt(2) * head_mm / headBase, Math.sqrt(2) * seat_mm / seatBase));
    }

    private WholeShop.Frame readOnTheTube() {
        WholeShop.Frame frame = frame();
        // In the order in which somebody may come to them.
        read(frame, Spot.HEAD_HIGH, "149.48");
        read(frame, Spot.SEAT_LOW, "150.12");
        read(frame, Spot.HEAD_LOW, "149.91");
        read(frame, Spot.SEAT_HIGH, "150.42");
        return frame;
    }

    @Test
    void noVerdictIsThereBeforeTheFiguresAreReduced() {
        WholeShop.Frame frame = readOnTheTube();
        assertThat(state(frame, "100-1")).isEqualTo(CharacteristicState.OPEN);
        assertThat(readings.ofTravellers(List.of(frame.travellerId()))).isEmpty();
        assertThat(sheet(frame).standing()).hasSize(4);
    }

    /** One characteristic that conforms says nothing of those that nobody has read. */
    @Test
    void theSheetConformsNotBeforeEverythingIsRead() {
        WholeShop.Frame frame = readOnTheTube();
        onThe(frame, TableSetUp.Base.MANDREL);
        read(frame, Spot.MANDREL_LOW, "150.20");
        read(frame, Spot.MANDREL_HIGH, "150.20");
        reduce(frame);
        TableSheet sheet = sheets.of(shop.at(frame).line().operationId(), null);
        assertThat(sheet.rows()).filteredOn(row -> !row.read()).isNotEmpty();
        assertThat(sheet.rows()).filteredOn(TableSheet.Row::read).isNotEmpty();
        assertThat(sheet.word()).isEqualTo("to be read");
        assertThat(sheet.told()).contains("to be read");
    }

    @Test
    void theShortBaseLeavesTheTwistUndecidedAndTheMandrelDecidesIt() {
        WholeShop.Frame frame = readOnTheTube();
        List<ReadingLine> first = reduce(frame);
        ReadingLine twist = of(first, "100-1");
        double expected = lean_deg(149.91, 149.48, 90) - lean_deg(150.12, 150.42, 300);
        assertThat(twist.value().doubleValue()).isCloseTo(expected, within(1e-6));
        assertThat(Objects.requireNonNull(twist.u()).doubleValue())
                .isCloseTo(u_deg(TUBE_MM, 90, TUBE_MM, 300), within(1e-4));
        assertThat(twist.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(twist.gauge()).isEqualTo(heightGauge);
        assertThat(first).extracting(ReadingLine::code).containsExactly("100-1", "100-2", "100-9");

        onThe(frame, TableSetUp.Base.MANDREL);
        read(frame, Spot.MANDREL_LOW, "150.45");
        read(frame, Spot.MANDREL_HIGH, "148.95");
        ReadingLine decided = of(reduce(frame), "100-1");
        assertThat(decided.value().doubleValue())
                .isCloseTo(lean_deg(150.45, 148.95, 300) - lean_deg(150.12, 150.42, 300), within(1e-6));
        assertThat(Objects.requireNonNull(decided.u()).doubleValue())
                .isCloseTo(u_deg(MANDREL_MM, 300, TUBE_MM, 300), within(1e-4));
        assertThat(decided.verdict()).isEqualTo(Verdict.NOT_CONFORMING);
        assertThat(state(frame, "100-1")).isEqualTo(CharacteristicState.NOT_CONFORMING);
    }

    @Test
    void everyReadingSaysWhichReductionItCameFromAndThatSaysItsFiguresAndItsBudget() {
        WholeShop.Frame frame = readOnTheTube();
        ReadingLine twist = of(reduce(frame), "100-1");
        ReductionLine reduction = Objects.requireNonNull(sheet(frame).newest());
        assertThat(twist.reductionId()).isEqualTo(reduction.reductionId());
        assertThat(reduction.used())
                .containsExactlyInAnyOrderElementsOf(
                        sheet(frame).standing().stream().map(RawLine::readingId).toList());
        DeviationLine line = reduction.deviations().stream()
                .filter(one -> one.what() == Deviation.TWIST)
                .findFirst()
                .orElseThrow();
        assertThat(line.budget())
                .extracting(DeviationLine.Cause::kind)
                .contains(ErrorKind.REPEATABILITY, ErrorKind.PLATE, ErrorKind.CLAMP, ErrorKind.OVALITY);
        double squares = line.budget().stream()
                .mapToDouble(cause -> cause.u().doubleValue() * cause.u().doubleValue())
                .sum();
        assertThat(Math.sqrt(squares)).isCloseTo(line.u().doubleValue(), within(1e-4));
        // Independent: the gauge's 0.012 counts for every height.
        assertThat(line.uIndependent().doubleValue())
                .isCloseTo(u_deg(Math.hypot(TUBE_MM, 0.012), 90, Math.hypot(TUBE_MM, 0.012), 300), within(1e-5));
    }

    @Test
    void theNonDriveSideUpTurnsEverySign() {
        WholeShop.Frame frame = frame();
        TableSetUp now = turns.setUp(operation(frame));
        figures.setUp(
                shop.act(aligner),
                operation(frame),
                new TableSetUp(
                        now.datum(),
                        now.base(),
                        false,
                        now.seatLow_mm(),
                        now.seatHigh_mm(),
                        now.tubeBase_mm(),
                        now.mandrelBase_mm(),
                        null,
                        null,
                        null),
                figures.saidOf(operation(frame)));
        read(frame, Spot.HEAD_HIGH, "149.48");
        read(frame, Spot.HEAD_LOW, "149.91");
        seatTube(frame, "150.12", "150.42");
        assertThat(of(reduce(frame), "100-1").value().doubleValue())
                .isCloseTo(lean_deg(150.12, 150.42, 300) - lean_deg(149.91, 149.48, 90), within(1e-6));
    }

    @Test
    void aCorrectedFigureCorrectsTheReadingsThatCameFromIt() {
        WholeShop.Frame frame = frame();
        seatTube(frame, "150.12", "150.10");
        read(frame, Spot.HEAD_LOW, "150.02");
        read(frame, Spot.HEAD_HIGH, "150.08");
        ReadingLine first = of(reduce(frame), "100-1");
        assertThat(first.verdict()).isEqualTo(Verdict.CONFORMING);

        RawLine wrong = Objects.requireNonNull(sheet(frame).at(Spot.HEAD_HIGH));
        read(aligner, frame, Spot.HEAD_HIGH, "150.06", wrong.readingId(), "read 6 as 8");
        ReadingLine second = of(reduce(frame), "100-1");
        assertThat(second.replacesId()).isEqualTo(first.readingId());
        assertThat(second.reason()).isEqualTo("read 6 as 8");
        assertThat(sheet(frame).figures().stream().filter(line -> line.readingId() == wrong.readingId()))
                .singleElement()
                .satisfies(old -> assertThat(old.replaced()).isTrue());
    }

    @Test
    void whatWasReadBeforeAPushIsNotReducedAfterIt() {
        WholeShop.Frame frame = readOnTheTube();
        reduce(frame);
        coldSets.push(
                shop.act(shop.qualified("ALIGN", NEXT_YEAR, org.trammel.shop.people.Role.ALIGNER)),
                line(frame, "100-1").characteristicId(),
                new BigDecimal("0.3"),
                null);
        assertThat(sheet(frame).turn()).isEqualTo(2);
        assertThat(sheet(frame).figures()).isEmpty();
        assertThat(refusal(() -> reduce(frame)).why()).contains("No figure stands");
        // The clock of the test stands still: the next turn begins at the instant of the push.
        seatTube(frame, "150.12", "150.10");
        read(frame, Spot.HEAD_LOW, "150.02");
        read(frame, Spot.HEAD_HIGH, "150.04");
        assertThat(sheet(frame).turn()).isEqualTo(2);
        assertThat(of(reduce(frame), "100-1").verdict()).isEqualTo(Verdict.CONFORMING);
    }

    @Test
    void theSameFiguresAreNotJudgedTwice() {
        WholeShop.Frame frame = readOnTheTube();
        Act act = shop.act(aligner);
        List<ReadingLine> once = reductions.reduce(act, operation(frame));
        assertThat(reductions.reduce(act, operation(frame)))
                .extracting(ReadingLine::readingId)
                .containsExactlyElementsOf(
                        once.stream().map(ReadingLine::readingId).toList());
        assertThat(refusal(() -> reduce(frame)).why()).contains("not judged before");
    }

    @Test
    void facesOfTheShellTakeItsTiltOutAndAFaceThatIsNotCleanGivesNothing() {
        WholeShop.Frame frame = frame();
        figures.setUp(
                shop.act(aligner),
                operation(frame),
                turns.setUp(operation(frame)).from(TableSetUp.Datum.FACES),
                figures.saidOf(operation(frame)));
        seatTube(frame, "150.00", "150.05");
        read(frame, Spot.HEAD_LOW, "150.00");
        read(frame, Spot.HEAD_HIGH, "150.02");
        assertThat(refusal(() -> reduce(frame)).why()).contains("gives no geometry");
    }

    @Test
    void halfATubeTellsNothingAndSaysWhatItNeeds() {
        WholeShop.Frame frame = frame();
        read(frame, Spot.HEAD_LOW, "150.02");
        assertThat(refusal(() -> reduce(frame)).why()).isNotBlank();
        assertThat(state(frame, "100-1")).isEqualTo(CharacteristicState.OPEN);
    }

    @Test
    void theRearAxleLiesMidwayBetweenTheDropouts() {
        WholeShop.Frame frame = frame();
        read(frame, Spot.AXLE_DRIVE, "224.30");
        read(frame, Spot.AXLE_OTHER, "76.10");
        ReadingLine offset = of(reduce(frame), "100-3");
        // (224.30 + 76.10) / 2 less the post at 150
        assertThat(offset.value()).isEqualByComparingTo("0.2");
        assertThat(offset.verdict()).isEqualTo(Verdict.CONFORMING);
    }

    /** By hand: 148,0 fore less 148,9 aft is −0,9 over the 60 mm; 0,3 is the limit, to whatever side they close. */
    @Test
    void dropoutsThatCloseForwardsAreJudgedByHowFarTheyDo() {
        CharacteristicSheet c =
                characteristic("100-5", "Dropouts parallel over 60 mm", "mm", "0.3", "fore and aft", "up and down");
        WholeShop.Frame frame = frame(new CharacteristicSheet(
                c.code(),
                c.name(),
                c.unit(),
                2,
                false,
                BigDecimal.ZERO,
                null,
                new BigDecimal("0.3"),
                c.gaugeKind(),
                c.points(),
                Reduction.GREATEST,
                c.rule(),
                c.signers(),
                c.sided(),
                false,
                false,
                true,
                c.coldSetClock(),
                2,
                null,
                c.coldSetAmount(),
                "test"));
        read(frame, Spot.GAP_FORE, "148.0");
        read(frame, Spot.GAP_AFT, "148.9");
        read(frame, Spot.GAP_UP, "148.1");
        read(frame, Spot.GAP_DOWN, "148.0");
        ReadingLine gaps = of(reduce(frame), "100-5");
        assertThat(gaps.raw())
                .usingElementComparator(BigDecimal::compareTo)
                .containsExactly(new BigDecimal("-0.9"), new BigDecimal("0.1"));
        assertThat(gaps.verdict()).isEqualTo(Verdict.NOT_CONFORMING);
    }

    /** The mandrel gives −0,344 or so, out by more than the guard band of 0,033; the short base gives −0,331. */
    @Test
    void figuresReadBeforeDoNotJudgeInThePlaceOfNewerOnes() {
        WholeShop.Frame frame = readOnTheTube();
        onThe(frame, TableSetUp.Base.MANDREL);
        shop.clock().pass(Duration.ofMinutes(1));
        read(frame, Spot.MANDREL_LOW, "150.75");
        read(frame, Spot.MANDREL_HIGH, "149.25");
        assertThat(of(reduce(frame), "100-1").verdict()).isEqualTo(Verdict.NOT_CONFORMING);
        shop.clock().pass(Duration.ofMinutes(5));
        onThe(frame, TableSetUp.Base.TUBE);
        assertThat(refusal(() -> reduce(frame)).why()).contains("not judged before");
        assertThat(state(frame, "100-1")).isEqualTo(CharacteristicState.NOT_CONFORMING);
        onThe(frame, TableSetUp.Base.MANDREL);
        RawLine low = Objects.requireNonNull(sheet(frame).at(Spot.MANDREL_LOW));
        read(aligner, frame, Spot.MANDREL_LOW, "149.65", low.readingId(), "read once more");
        assertThat(refusal(() -> reduce(frame)).instead()).contains("QA lead");
        assertThat(state(frame, "100-1")).isEqualTo(CharacteristicState.NOT_CONFORMING);
    }

    /** 200 mm instead of 90 make −0,12° of the head tube's lean of −0,27°, and less than half of its uncertainty. */
    @Test
    void aLongerBaseIsNoReadingOnIt() {
        WholeShop.Frame frame = readOnTheTube();
        assertThat(of(reduce(frame), "100-1").verdict()).isEqualTo(Verdict.UNDECIDED);
        shop.clock().pass(Duration.ofMinutes(5));
        base(frame, "200");
        assertThat(refusal(() -> reduce(frame)).why()).contains("lie elsewhere");
        shop.clock().pass(Duration.ofMinutes(1));
        base(frame, "90");
        assertThat(refusal(() -> reduce(frame)).why()).contains("not judged before");
        base(frame, "200");
        RawLine low = Objects.requireNonNull(sheet(frame).at(Spot.HEAD_LOW));
        read(aligner, frame, Spot.HEAD_LOW, "149.90", low.readingId(), "read once more");
        assertThat(refusal(() -> reduce(frame)).why()).contains("lie elsewhere");
        assertThat(state(frame, "100-1")).isEqualTo(CharacteristicState.UNDECIDED);
        RawLine high = Objects.requireNonNull(sheet(frame).at(Spot.HEAD_HIGH));
        read(other, frame, Spot.HEAD_HIGH, "148.95", high.readingId(), "read at the new station");
        read(
                other,
                frame,
                Spot.HEAD_LOW,
                "150.45",
                Objects.requireNonNull(sheet(frame).at(Spot.HEAD_LOW)).readingId(),
                "read at the new station");
        assertThat(of(reduce(frame), "100-1").verdict()).isEqualTo(Verdict.NOT_CONFORMING);
    }

    @Test
    void whoDidNotSeeHowAnotherSaysItLiesDoesNotWriteOverIt() {
        WholeShop.Frame frame = frame();
        base(frame, "120");
        Long seen = figures.saidOf(operation(frame));
        base(frame, "110");
        TableSetUp mine = turns.setUp(operation(frame)).on(TableSetUp.Base.MANDREL);
        assertThat(refusal(() -> figures.setUp(shop.act(other), operation(frame), mine, seen))
                        .kind())
                .isEqualTo(Refusal.Kind.STALE);
        assertThat(turns.setUp(operation(frame)).base()).isEqualTo(TableSetUp.Base.TUBE);
    }

    private void base(WholeShop.Frame frame, String mm) {
        TableSetUp now = turns.setUp(operation(frame));
        figures.setUp(
                shop.act(aligner),
                operation(frame),
                new TableSetUp(
                        now.datum(),
                        now.base(),
                        now.driveUp(),
                        now.seatLow_mm(),
                        now.seatHigh_mm(),
                        new BigDecimal(mm),
                        now.mandrelBase_mm(),
                        null,
                        null,
                        null),
                figures.saidOf(operation(frame)));
    }
}
