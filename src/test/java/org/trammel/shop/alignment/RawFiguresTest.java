package org.trammel.shop.alignment;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/** What is kept at the table, and what is not. */
class RawFiguresTest extends OnThePlate {

    @Test
    void aFigureIsKeptOnceHoweverOftenItIsSent() {
        WholeShop.Frame frame = frame();
        Act act = shop.act(aligner);
        RawFigures.Typed typed =
                new RawFigures.Typed(Spot.SEAT_LOW, new BigDecimal("150.12"), heightGauge, null, null, false);
        figures.read(act, operation(frame), typed);
        figures.read(act, operation(frame), typed);
        assertThat(sheet(frame).figures()).singleElement().satisfies(line -> {
            assertThat(line.mm()).isEqualByComparingTo("150.12");
            assertThat(line.gauge()).isEqualTo(heightGauge);
            assertThat(line.u_mm()).isEqualByComparingTo("0.012");
        });
    }

    @Test
    void anotherTabletGoesOnWithTheSheet() {
        WholeShop.Frame frame = frame();
        read(frame, Spot.SEAT_LOW, "150.12");
        read(other, frame, Spot.SEAT_HIGH, "150.42", null, null);
        assertThat(sheet(frame).standing()).extracting(RawLine::personId).containsExactly(aligner, other);
    }

    @Test
    void twoTabletsAtOneSpotAreToldOfBothFigures() {
        WholeShop.Frame frame = frame();
        read(frame, Spot.SEAT_LOW, "150.12");
        Refusal refused = refusal(() -> read(other, frame, Spot.SEAT_LOW, "150.15", null, null));
        assertThat(refused.kind()).isEqualTo(Refusal.Kind.STALE);
        assertThat(refused.why()).contains("150,12").contains("150,15");
        assertThat(sheet(frame).standing()).hasSize(1);
    }

    @Test
    void aCorrectionSaysWhyAndTheOldFigureStays() {
        WholeShop.Frame frame = frame();
        read(frame, Spot.SEAT_LOW, "150.21");
        long wrong =
                java.util.Objects.requireNonNull(sheet(frame).at(Spot.SEAT_LOW)).readingId();
        assertThat(refusal(() -> read(aligner, frame, Spot.SEAT_LOW, "150.12", wrong, " "))
                        .field())
                .isEqualTo("reason");
        read(aligner, frame, Spot.SEAT_LOW, "150.12", wrong, "two digits swapped");
        assertThat(sheet(frame).figures()).hasSize(2);
        assertThat(sheet(frame).standing()).singleElement().satisfies(line -> {
            assertThat(line.mm()).isEqualByComparingTo("150.12");
            assertThat(line.reason()).isEqualTo("two digits swapped");
        });
    }

    @Test
    void aFigureThatIsStruckOutStaysOnRecordAndCountsNoMore() {
        WholeShop.Frame frame = frame();
        read(frame, Spot.SEAT_LOW, "150.12");
        long doubled = sheet(frame).standing().get(0).readingId();
        figures.strikeOut(shop.act(aligner), operation(frame), doubled, "read at the wrong mark");
        assertThat(sheet(frame).standing()).isEmpty();
        assertThat(sheet(frame).figures()).hasSize(2);
        read(frame, Spot.SEAT_LOW, "150.10");
        assertThat(sheet(frame).standing()).hasSize(1);
    }

    @Test
    void heightsInInchesAreAskedAbout() {
        Refusal asked = refusal(() -> read(frame(), Spot.SEAT_LOW, "5.91"));
        assertThat(asked.kind()).isEqualTo(Refusal.Kind.ASK);
        // 5.91 in of 25.4 mm
        assertThat(asked.why()).contains("150,114");
        assertThat(asked.instead()).contains("millimetres");
    }

    @Test
    void aGaugeThatIsOutOfDateOrHasNoUncertaintyReadsNothing() {
        WholeShop.Frame frame = frame();
        heightGauge = shop.gauge("HEIGHT", "mm", "0.012", LocalDate.of(2026, 1, 31));
        assertThat(refusal(() -> read(frame, Spot.SEAT_LOW, "150.12")).why()).contains("was due");
        heightGauge = shop.gauge("HEIGHT", "mm", null, NEXT_YEAR);
        assertThat(refusal(() -> read(frame, Spot.SEAT_LOW, "150.12")).why()).contains("without an uncertainty");
        heightGauge = calliper;
        assertThat(refusal(() -> read(frame, Spot.SEAT_LOW, "150.12")).field()).isEqualTo("gauge");
        heightGauge = "";
        assertThat(refusal(() -> read(frame, Spot.SEAT_LOW, "150.12")).why()).contains("No gauge was chosen");
        assertThat(sheet(frame).figures()).isEmpty();
    }

    @Test
    void whoeverMayNotReadTheCharacteristicsReadsNothing() {
        WholeShop.Frame frame = frame();
        long worker = shop.hire(Role.STATION_WORKER);
        assertThat(refusal(() -> read(worker, frame, Spot.SEAT_LOW, "150.12", null, null))
                        .kind())
                .isEqualTo(Refusal.Kind.PERSON);
    }

    @Test
    void moreDigitsThanAreKeptAreRefusedAndNotRoundedAway() {
        WholeShop.Frame frame = frame();
        assertThat(refusal(() -> read(frame, Spot.SEAT_LOW, "150.12345")).why())
                .contains("150.12345 has more digits than are kept: four after the sign");
        String arm = shop.gauge("ARM", "mm", "0.020", NEXT_YEAR);
        Refusal point = refusal(() -> figures.points(
                shop.act(aligner),
                operation(frame),
                List.of(new RawFigures.TypedPoint(
                        Feature.DRIVE_FACE,
                        "f1",
                        new BigDecimal("1.5"),
                        new BigDecimal("-20.00005"),
                        new BigDecimal("36.5"))),
                arm));
        assertThat(point.field()).isEqualTo("points");
        assertThat(point.why()).contains("Point f1: -20.00005 has more digits than are kept");
        TableSetUp now = turns.setUp(operation(frame));
        Refusal station = refusal(() -> figures.setUp(
                shop.act(aligner),
                operation(frame),
                new TableSetUp(
                        now.datum(),
                        now.base(),
                        true,
                        new BigDecimal("100.0004"),
                        new BigDecimal("400"),
                        now.tubeBase_mm(),
                        now.mandrelBase_mm(),
                        null,
                        null,
                        null),
                figures.saidOf(operation(frame))));
        assertThat(station.field()).isEqualTo("seatLow");
        assertThat(sheet(frame).figures()).isEmpty();
    }

    @Test
    void stationsTooNearEachOtherAreRefused() {
        WholeShop.Frame frame = frame();
        TableSetUp now = turns.setUp(operation(frame));
        Refusal refused = refusal(() -> figures.setUp(
                shop.act(aligner),
                operation(frame),
                new TableSetUp(
                        now.datum(),
                        now.base(),
                        true,
                        new BigDecimal("100"),
                        new BigDecimal("104"),
                        now.tubeBase_mm(),
                        now.mandrelBase_mm(),
                        null,
                        null,
                        null),
                figures.saidOf(operation(frame))));
        assertThat(refused.field()).isEqualTo("seatHigh");
    }

    @Test
    void pointsOfAnArmComeAsLinesAndEachOnce() {
        WholeShop.Frame frame = frame();
        String arm = shop.gauge("ARM", "mm", "0.020", NEXT_YEAR);
        List<RawFigures.TypedPoint> points = PointLines.read("""
                feature;name;x;y;z
                head tube;1;440,1;560,2;0,4
                seat-tube;1;-27,5;96,1;0,1""");
        figures.points(shop.act(aligner), operation(frame), points, arm);
        assertThat(sheet(frame).standing()).extracting(RawLine::spot).containsExactly("HEAD_TUBE", "SEAT_TUBE");
        assertThat(refusal(() -> figures.points(shop.act(aligner), operation(frame), points, arm))
                        .why())
                .contains("there twice");
        assertThat(refusal(() -> PointLines.read("head tube;1;440,1;560,2")).why())
                .contains("4 columns");
        assertThat(refusal(() -> PointLines.read("handlebar;1;440;560;0")).why())
                .contains("no feature");
        assertThat(refusal(() -> PointLines.read("head tube;1;nan;560;0")).field())
                .isEqualTo("points");
    }
}
