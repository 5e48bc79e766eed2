package org.trammel.shop.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.gauges.Failure;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.gauges.GaugeRegister;
import org.trammel.shop.gauges.NewGauge;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Shipping;
import org.trammel.shop.travellers.Travellers;

/**
 * Frames measured with a gauge that is found wrong then. Limits are 0 ± 1.00 with u 0.060, so g = 1.65 × 0.060 = 0.099 and
 * a value conforms up to 0.901 (worked by hand; the guard band as in VerdictsTest).
 */
abstract class AfterAFailure extends AtTheTable {

    static final LocalDate FOUND = LocalDate.of(2026, 3, 17);

    @Autowired
    GaugeRegister register;

    @Autowired
    Rejudgements rejudgements;

    @Autowired
    FrameResults results;

    @Autowired
    Travellers travellers;

    @Autowired
    Shipping shipping;

    void settle(long by, RejudgementLine done, WholeShop.Frame frame) {
        settle(by, done, frame, FrameResult.MEASURED_AGAIN, "read with another");
    }

    boolean settle(long by, RejudgementLine done, WholeShop.Frame frame, FrameResult result, String words) {
        return results.settle(shop.act(by), done.id(), frame.serial(), FrameSettling.of(result, words));
    }

    RejudgedFrameLine frameOf(RejudgementLine done, WholeShop.Frame frame) {
        return rejudgements.frames(done.id(), 0, 9).stream()
                .filter(line -> line.serial().equals(frame.serial()))
                .findFirst()
                .orElseThrow();
    }

    ReadingLine readConfirmed(WholeShop.Frame frame, String gauge, String value) {
        return readings.read(shop.act(worker), characteristic(frame), input(gauge, true, value));
    }

    RejudgementLine failed(String gauge, @Nullable String error) {
        return failed(gauge, FOUND, error, "°");
    }

    RejudgementLine failed(String gauge, LocalDate on, @Nullable String error, String unit) {
        register.fail(
                shop.act(qa),
                gauge,
                new Failure(on, error == null ? null : new BigDecimal(error), unit, null, "found wrong"));
        rejudgements.judgeToTheEnd();
        return rejudgements.page(Long.MAX_VALUE, 200).stream()
                .filter(line -> line.gauge().equals(gauge))
                .findFirst()
                .orElseThrow();
    }

    RejudgedLine only(RejudgementLine done) {
        List<RejudgedLine> lines = rejudgements.readings(done.id(), 0, 9);
        assertThat(lines).hasSize(1);
        return lines.get(0);
    }

    FrameOutcome outcome(RejudgementLine done, WholeShop.Frame frame) {
        return frameOf(done, frame).outcome();
    }

    List<FrameSheet.HoldLine> holdsOf(WholeShop.Frame frame, RejudgementLine done) {
        return travellers.holdsOf(frame.serial()).stream()
                .filter(hold -> hold.liftedAt() == null && hold.source().equals(done.number()))
                .toList();
    }

    String offsetGauge() {
        return shop.gauge("TWIST", "°", "0.060", NEXT_YEAR);
    }

    String setUpWith(String part) {
        String other = shop.gauge("MANDREL", "mm", "0.005", NEXT_YEAR);
        GaugeRange range = new GaugeRange(
                "TWIST",
                "°",
                new BigDecimal("-10"),
                new BigDecimal("10"),
                new BigDecimal("0.001"),
                new BigDecimal("0.060"),
                null,
                "budget");
        return register.setUp(
                        shop.act(qa),
                        "S" + part,
                        new NewGauge("on the mandrel", null, "", false, List.of(range)),
                        List.of(part, other))
                .code();
    }

    WholeShop.Frame shipped(String gauge, String value) {
        SmallRoute.Op at = SmallRoute.op("080");
        at.characteristic(offset());
        WholeShop.Frame frame = shop.frame(SmallRoute.of(at.sheet()).sheet());
        readConfirmed(frame, gauge, value);
        shipping.ship(shop.act(qa), frame.travellerId(), frame.serial());
        return frame;
    }

    /** The difference of two heights, nominal ± 0.10 mm. */
    static CharacteristicSheet difference(BigDecimal nominal) {
        return new CharacteristicSheet(
                "080-2",
                "step between two faces",
                "mm",
                2,
                false,
                nominal,
                new BigDecimal("-0.10"),
                new BigDecimal("0.10"),
                "TWIST",
                List.of("one", "other"),
                Reduction.SPAN,
                Rule.GUARDED,
                List.of(Signer.WORKER),
                false,
                false,
                false,
                true,
                null,
                0,
                null,
                null,
                "test");
    }

    static CharacteristicSheet offset() {
        return offset(false);
    }

    static CharacteristicSheet offset(boolean pair) {
        return new CharacteristicSheet(
                "080-1",
                "offset of the rear axle",
                "°",
                2,
                false,
                BigDecimal.ZERO,
                new BigDecimal("-1.00"),
                new BigDecimal("1.00"),
                "TWIST",
                List.of("once"),
                Reduction.SINGLE,
                Rule.GUARDED,
                List.of(Signer.WORKER),
                false,
                pair,
                pair,
                true,
                null,
                0,
                null,
                null,
                "test");
    }
}
