package org.trammel.shop.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.gauges.Failure;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.gauges.GaugeRegister;
import org.trammel.shop.gauges.NewGauge;
import org.trammel.shop.inspection.FrameOutcome;
import org.trammel.shop.inspection.FrameResult;
import org.trammel.shop.inspection.FrameResults;
import org.trammel.shop.inspection.FrameSettling;
import org.trammel.shop.inspection.RejudgementLine;
import org.trammel.shop.inspection.Rejudgements;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.CharacteristicState;

/**
 * Figures that lie on the sheet while the days pass: what their gauge was on the day it read them decides whether they are
 * judged, not what it is on the day they are reduced.
 */
class ReducedLaterTest extends OnThePlate {

    private static final LocalDate TUESDAY = LocalDate.of(2026, 3, 17);

    @Autowired
    private GaugeRegister register;

    @Autowired
    private Rejudgements rejudgements;

    @Autowired
    private FrameResults results;

    /** Monday; the gauge of a test was last calibrated in January. */
    @BeforeEach
    void monday() {
        shop.clock().pass(Duration.ofDays(-2));
    }

    private RejudgementLine foundHighOnTuesday(String gauge) {
        shop.clock().pass(Duration.ofDays(1));
        register.fail(shop.act(qa), gauge, new Failure(TUESDAY, new BigDecimal("0.18"), "mm", null, "reads high"));
        rejudgements.judgeToTheEnd();
        return rejudgements.page(Long.MAX_VALUE, 200).stream()
                .filter(line -> line.gauge().equals(gauge))
                .findFirst()
                .orElseThrow();
    }

    private void inUseAgainOnWednesday(String gauge) {
        shop.clock().pass(Duration.ofDays(1));
        register.calibrated(shop.act(qa), gauge, LocalDate.of(2026, 3, 18), NEXT_YEAR, "C-2", null, "as it should be");
        register.unblock(shop.act(qa), gauge, "put right and calibrated");
    }

    private void axle(WholeShop.Frame frame, String drive, String otherSide) {
        read(frame, Spot.AXLE_DRIVE, drive);
        read(frame, Spot.AXLE_OTHER, otherSide);
    }

    private void again(WholeShop.Frame frame, Spot spot, String mm) {
        Long seen = sheet(frame).figures().stream()
                .filter(line -> line.spot().equals(spot.name()) && line.stands())
                .map(RawLine::readingId)
                .findFirst()
                .orElseThrow();
        read(aligner, frame, spot, mm, seen, "read with a gauge that was wrong");
    }

    @Test
    void figuresOfAGaugeThatWasFoundWrongSinceAreNotJudgedThoughItWasPutRight() {
        WholeShop.Frame frame = frame();
        axle(frame, "224.10", "76.10");
        assertThat(foundHighOnTuesday(heightGauge).readings()).isZero();
        inUseAgainOnWednesday(heightGauge);
        Refusal refused = refusal(() -> reduce(frame));
        assertThat(refused.why()).contains("was found wrong on 2026-03-17", "2026-03-16");
        assertThat(state(frame, "100-3")).isEqualTo(CharacteristicState.OPEN);
        again(frame, Spot.AXLE_DRIVE, "224.10");
        assertThat(refusal(() -> reduce(frame)).why()).contains("was found wrong on 2026-03-17");
        again(frame, Spot.AXLE_OTHER, "76.10");
        reduce(frame);
        assertThat(state(frame, "100-3")).isEqualTo(CharacteristicState.CONFORMING);
    }

    @Test
    void figuresOfASetUpWithAPartThatWasFoundWrongSinceAreNotJudgedEither() {
        String part = heightGauge;
        heightGauge = register.setUp(
                        shop.act(qa),
                        "S" + part,
                        new NewGauge(
                                "on its stand",
                                null,
                                "",
                                false,
                                List.of(new GaugeRange(
                                        "HEIGHT",
                                        "mm",
                                        BigDecimal.ZERO,
                                        new BigDecimal("600"),
                                        new BigDecimal("0.01"),
                                        new BigDecimal("0.012"),
                                        null,
                                        "from memory"))),
                        List.of(part, calliper))
                .code();
        WholeShop.Frame frame = frame();
        axle(frame, "224.10", "76.10");
        foundHighOnTuesday(part);
        inUseAgainOnWednesday(part);
        assertThat(refusal(() -> reduce(frame)).why()).contains("Its part " + part + " was found wrong on 2026-03-17");
    }

    /** The middle of the axle was read at −0.80 and may have lain at −0.98, past −1.00 and its guard band. */
    @Test
    void aFrameIsNotMeasuredAgainByOneFigureAmongThoseThatWereReadWrong() {
        WholeShop.Frame frame = frame();
        axle(frame, "223.20", "75.20");
        reduce(frame);
        RejudgementLine done = foundHighOnTuesday(heightGauge);
        assertThat(rejudgements.frames(done.id(), 0, 9))
                .singleElement()
                .satisfies(line -> assertThat(line.outcome()).isEqualTo(FrameOutcome.MEASURE_AGAIN));
        inUseAgainOnWednesday(heightGauge);
        again(frame, Spot.AXLE_DRIVE, "223.21");
        assertThat(refusal(() -> reduce(frame)).why()).contains("was found wrong");
        assertThat(refusal(() -> settled(done, frame)).why()).contains("Nothing was read yet in the place of 100-3");
        again(frame, Spot.AXLE_OTHER, "75.22");
        reduce(frame);
        assertThatCode(() -> settled(done, frame)).doesNotThrowAnyException();
    }

    private void settled(RejudgementLine done, WholeShop.Frame frame) {
        results.settle(
                shop.act(qa),
                done.id(),
                frame.serial(),
                new FrameSettling(FrameResult.MEASURED_AGAIN, "read again on Wednesday", false, null));
    }

    @Test
    void figuresOfTheLastDayThatAGaugeWasInDateAreReducedTheDayAfter() {
        heightGauge = shop.gauge("HEIGHT", "mm", "0.012", LocalDate.of(2026, 3, 16));
        WholeShop.Frame frame = frame();
        axle(frame, "224.10", "76.10");
        shop.clock().pass(Duration.ofDays(1));
        assertThat(refusal(() -> read(frame, Spot.SEAT_LOW, "150.00")).why()).contains("was due on 2026-03-16");
        reduce(frame);
        assertThat(state(frame, "100-3")).isEqualTo(CharacteristicState.CONFORMING);
    }
}
