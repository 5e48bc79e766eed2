package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.shop.gauges.Failure;
import org.trammel.shop.gauges.GaugeRegister;
import org.trammel.shop.inspection.Rejudgements;
import org.trammel.shop.materials.LotRegister;
import org.trammel.shop.records.Act;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Remarks;
import org.trammel.shop.travellers.Travellers;

/**
 * Tells what the last days before the demo morning brought to many frames at once.
 *
 * <p>The story was completed so that no gate was passed under a hold. The accuracy test of 16 March that the thermocouple
 * failed is worked out and entered in the afternoon of 17 March, when the last of the frames had been aligned; they are
 * held from then on, and the one whose shock is missing with them. The maker's letter about a lot of rod is of 17 March too, but was opened on the demo morning: a
 * frame welded with it was quenched that day, and a held frame is not.
 */
@Component
@Profile("demo")
class DemoLastDays {

    private final DemoActs acts;
    private final DemoClock clock;
    private final DemoLots lots;
    private final DemoOvens ovens;
    private final DemoCoats coats;
    private final Travellers travellers;
    private final Holds holds;
    private final Remarks remarks;
    private final LotRegister lotRegister;
    private final GaugeRegister gaugeRegister;
    private final Rejudgements rejudgements;

    DemoLastDays(
            DemoActs acts,
            DemoClock clock,
            DemoLots lots,
            DemoOvens ovens,
            DemoCoats coats,
            Travellers travellers,
            Holds holds,
            Remarks remarks,
            LotRegister lotRegister,
            GaugeRegister gaugeRegister,
            Rejudgements rejudgements) {
        this.acts = acts;
        this.clock = clock;
        this.lots = lots;
        this.ovens = ovens;
        this.coats = coats;
        this.travellers = travellers;
        this.holds = holds;
        this.remarks = remarks;
        this.lotRegister = lotRegister;
        this.gaugeRegister = gaugeRegister;
        this.rejudgements = rejudgements;
    }

    /** An oven is found in doubt, a gauge fails, a lot is bad. */
    void tell(Map<String, Long> orderIds) {
        clock.setTo(DemoStory.at("2026-03-16T15:50"));
        gaugeRegister.fail(
                acts.by("TR"),
                "TC-07",
                new Failure(
                        LocalDate.of(2026, 3, 16),
                        new BigDecimal("7"),
                        "°C",
                        new BigDecimal("177"),
                        "reads 7 high in the accuracy test of OV-1; TC-11 took its place"));
        clock.setTo(DemoStory.at("2026-03-16T16:00"));
        ovens.changeTheThermocouple();
        lockTheOven(orderIds.get("O-105"));
        lots.useUp();
        clock.setTo(DemoStory.at("2026-03-17T13:30"));
        ovens.enterTheFailedTest();
        clock.setTo(DemoStory.at("2026-03-17T14:00"));
        hold(
                acts.by("DO"),
                whole(orderIds.get("O-116")),
                HoldReason.CUSTOMER_PART,
                "customer's own shock not received, due 11 March",
                "by hand");
        clock.setTo(DemoStory.at("2026-03-17T15:00"));
        gaugeRegister.fail(
                acts.by("TR"),
                "HG-2",
                new Failure(
                        LocalDate.of(2026, 3, 17),
                        new BigDecimal("0.18"),
                        "mm",
                        new BigDecimal("300"),
                        "reads 0,18 high at 300"));
        rejudgements.judgeToTheEnd();
        clock.setTo(DemoStory.at("2026-03-17T17:00"));
        ovens.nameTheCoats();
        clock.setTo(DemoStory.at("2026-03-18T08:20"));
        coats.tooCold(whole(orderIds.get("O-107")));
        remarks.note(
                acts.by("LM"),
                whole(orderIds.get("O-107")),
                null,
                "Frame 17,2 °C, dew point 14,9: coat when it is 17,9.");
        clock.setTo(DemoStory.at("2026-03-18T08:26"));
        lotRegister.block(acts.by("TR"), "FL-4643-022", "the rod's maker wrote: some tubes may hold 5356 rods");
        clock.setTo(DemoStory.at("2026-03-18T08:28"));
        remarks.call(
                acts.by("SB"), null, null, "Jig J2: check overdue since 8 March, rear axles drift to the drive side.");
    }

    /** Nothing is loaded until the oven has passed its test again. */
    private void lockTheOven(long orderId) {
        travellers.ofOrder(orderId).stream()
                .filter(head -> !head.part().isEmpty())
                .forEach(head -> holdAt(
                        acts.by("TR"),
                        head.travellerId(),
                        "110",
                        HoldReason.OVEN_TRACE,
                        "OV-1 failed its accuracy test on 16 March; the repeat is booked for 18 March, 13:00",
                        "OV-1"));
    }

    /** Holds one operation that lies ahead; what comes before it goes on. */
    void holdAt(Act act, long travellerId, String operation, HoldReason reason, String words, String source) {
        long operationId = travellers.sheet(travellerId).operations().stream()
                .filter(line -> line.code().equals(operation))
                .mapToLong(FrameSheet.OperationLine::operationId)
                .max()
                .orElseThrow();
        place(act, travellerId, HoldScope.OPERATION, operationId, reason, words, source);
    }

    private void hold(Act act, long travellerId, HoldReason reason, String words, String source) {
        place(act, travellerId, HoldScope.FRAME, null, reason, words, source);
    }

    private void place(
            Act act,
            long travellerId,
            HoldScope scope,
            @Nullable Long operationId,
            HoldReason reason,
            String words,
            String source) {
        holds.place(act, new Holds.Request(travellerId, scope, operationId, reason, words, source, Set.of()));
    }

    private long whole(long orderId) {
        return travellers.ofOrder(orderId).stream()
                .filter(h -> h.part().isEmpty())
                .findFirst()
                .orElseThrow()
                .travellerId();
    }
}
