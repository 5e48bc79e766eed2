package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.shop.designs.DrawingOffice;
import org.trammel.shop.gauges.Failure;
import org.trammel.shop.gauges.GaugeRegister;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.materials.LotRegister;
import org.trammel.shop.nonconformance.Deciding;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.nonconformance.NonconformanceLine;
import org.trammel.shop.nonconformance.Proposal;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Remarks;
import org.trammel.shop.travellers.Shipping;
import org.trammel.shop.travellers.Travellers;

/** Tells what the last days before the demo morning brought: where each frame stands and why. */
@Component
@Profile("demo")
class DemoStory {

    private final DemoWalk walk;
    private final DemoOrders demoOrders;
    private final DemoActs acts;
    private final DemoClock clock;
    private final DemoLots lots;
    private final DrawingOffice office;
    private final Travellers travellers;
    private final Shipping shipping;
    private final Readings readings;
    private final Deciding deciding;
    private final Holds holds;
    private final Remarks remarks;
    private final Bench bench;
    private final LotRegister lotRegister;
    private final GaugeRegister gaugeRegister;

    DemoStory(
            DemoWalk walk,
            DemoOrders demoOrders,
            DemoActs acts,
            DemoClock clock,
            DemoLots lots,
            DrawingOffice office,
            Travellers travellers,
            Shipping shipping,
            Readings readings,
            Deciding deciding,
            Holds holds,
            Remarks remarks,
            Bench bench,
            LotRegister lotRegister,
            GaugeRegister gaugeRegister) {
        this.walk = walk;
        this.demoOrders = demoOrders;
        this.acts = acts;
        this.clock = clock;
        this.lots = lots;
        this.office = office;
        this.travellers = travellers;
        this.shipping = shipping;
        this.readings = readings;
        this.deciding = deciding;
        this.holds = holds;
        this.remarks = remarks;
        this.bench = bench;
        this.lotRegister = lotRegister;
        this.gaugeRegister = gaugeRegister;
    }

    /** Draws the frame of an order, and releases it if it stands in the shop. */
    void release(DemoOrder order, long orderId) {
        if (order.until().equals("design")) {
            design(order, orderId);
        } else {
            demoOrders.release(order, orderId);
        }
    }

    /** Brings a released frame to where it stands, but for what was found at its last operation. */
    void walk(DemoOrder order, long orderId) {
        if (order.until().equals("design")) {
            return;
        }
        String serial = travellers.ofOrder(orderId).get(0).serial();
        if (order.until().startsWith("ship ")) {
            clock.setTo(DemoOrders.start(order).plus(Duration.ofDays(2)));
            walk.to(order, whole(serial), "all");
            clock.setTo(at(order.until().substring("ship ".length())));
            shipping.ship(acts.by("DO"), whole(serial), serial);
            return;
        }
        for (String place : order.until().split(";")) {
            int space = place.indexOf(' ');
            String part = space < 0 ? "" : place.substring(0, space);
            clock.setTo(DemoOrders.start(order).plus(Duration.ofDays(2)));
            walk.to(order, travellers.inForce(serial, part).travellerId(), place.substring(space + 1));
        }
    }

    private void design(DemoOrder order, long orderId) {
        clock.setTo(at("2026-03-04T10:00"));
        long first = demoOrders.draw(order, orderId);
        if (order.order().equals("O-118")) {
            office.note(
                    acts.by("ME"),
                    first,
                    "Rear tyre to seat tube 2,5 mm; 6 or more are wanted. Chainstay 432 gives 6,4.");
        }
        office.withdraw(
                acts.by("ME"),
                first,
                order.order().equals("O-118")
                        ? "rear tyre to seat tube 2,5 mm, 6 or more are wanted"
                        : "customer asked for a longer rear cockpit");
        clock.setTo(at("2026-03-10T10:00"));
        long second = office.revise(
                        acts.by("ME"),
                        first,
                        order.order().equals("O-118") ? "chainstay 432 instead of 428" : "rear cockpit 20 mm longer")
                .revisionId();
        office.draw(acts.by("ME"), second, DemoPicture.png(), "image/png", order.order() + "-B.png");
        office.send(acts.by("ME"), second);
    }

    /** What was found at the last operation of one order. */
    void find(DemoOrder order, long orderId) {
        if (order.until().equals("design") || order.until().startsWith("ship ")) {
            return;
        }
        String serial = travellers.ofOrder(orderId).get(0).serial();
        switch (order.order()) {
            case "O-101" -> twist(serial);
            case "O-106" -> film(serial, "SA", "140");
            case "O-112" -> film(serial, "", "140");
            case "O-119" -> phase(serial);
            case "O-109" -> stop(serial, "purge alarm, oxygen 180 ppm; purge started again, down-tube node open");
            case "O-110" -> walkTorque(order, serial);
            default -> {
                // stands where it was walked to
            }
        }
    }

    /** The twist of O-101: undecided over the short base, not conforming on the mandrel. */
    private void twist(String serial) {
        FrameSheet.OperationSheetOfFrame at = travellers.sheet(whole(serial)).at();
        long twist = at.characteristics().get(0).characteristicId();
        clock.setTo(at("2026-03-18T08:05"));
        read(twist, "-0.331", "TS-1");
        clock.setTo(at("2026-03-18T08:24"));
        read(twist, "-0.344", "TM-1");
    }

    private void read(long characteristicId, String value, String gauge) {
        readings.read(
                acts.by("SB"), characteristicId, new Readings.Input(List.of(new BigDecimal(value)), gauge, null, true));
    }

    /** A coat that is too thin at one place, decided as rework from blasting on. */
    private void film(String serial, String part, String from) {
        long traveller = travellers.inForce(serial, part).travellerId();
        FrameSheet.OperationSheetOfFrame at = travellers.sheet(traveller).at();
        FrameSheet.CharacteristicLine thinnest = at.characteristics().stream()
                .filter(c -> c.code().endsWith("3b"))
                .findFirst()
                .orElseThrow();
        List<BigDecimal> raw = java.util.stream.IntStream.range(
                        0, thinnest.points().size())
                .mapToObj(i -> BigDecimal.valueOf(i == 3 ? 41 : 60 + i))
                .toList();
        clock.setTo(at("2026-03-16T11:20"));
        readings.read(
                acts.by("LM"),
                thinnest.characteristicId(),
                new Readings.Input(raw, thinnest.gaugeKind().equals("FILM-EDDY") ? "EC-1" : "MG-1", null, true));
        clock.setTo(at("2026-03-16T14:10"));
        decide(serial, "Powder thin behind the seat tube: strip without heat, blast, coat again.", from, "6");
    }

    private void phase(String serial) {
        FrameSheet.OperationSheetOfFrame at = travellers.sheet(whole(serial)).at();
        FrameSheet.CharacteristicLine phase = at.characteristics().stream()
                .filter(c -> c.code().equals("030-5"))
                .findFirst()
                .orElseThrow();
        clock.setTo(at("2026-03-17T10:05"));
        readings.read(
                acts.by("JA"),
                phase.characteristicId(),
                new Readings.Input(
                        List.of(
                                new BigDecimal("2.1"),
                                new BigDecimal("0.1"),
                                new BigDecimal("0.0"),
                                new BigDecimal("0.1")),
                        "LV-1",
                        null,
                        true));
        clock.setTo(at("2026-03-17T11:00"));
        decide(serial, "Down tube out of phase: scrap the tube, issue another, cut again.", "020", "2");
    }

    private void decide(String serial, String words, String from, String hours) {
        NonconformanceLine open = deciding.of(serial).get(0);
        deciding.propose(
                acts.by("TR"),
                open.id(),
                new Proposal(
                        Decision.REWORK,
                        words,
                        from,
                        null,
                        null,
                        false,
                        null,
                        false,
                        new BigDecimal(hours),
                        null,
                        Set.of()));
    }

    private void stop(String serial, String why) {
        clock.setTo(at("2026-03-17T16:20"));
        bench.stop(acts.by("HS"), travellers.sheet(whole(serial)).at().line().operationId(), why);
    }

    private void walkTorque(DemoOrder order, String serial) {
        walk.read(order, travellers.sheet(whole(serial)).at(), 6);
    }

    /** The days before the morning: a gauge fails, a lot is bad, an oven's thermocouple drifted. */
    void lastDays(Map<String, Long> orderIds) {
        clock.setTo(at("2026-03-17T09:00"));
        lots.lastDays();
        clock.setTo(at("2026-03-17T15:00"));
        gaugeRegister.fail(
                acts.by("TR"),
                "HG-2",
                new Failure(
                        LocalDate.of(2026, 3, 17),
                        new BigDecimal("0.18"),
                        "mm",
                        new BigDecimal("300"),
                        "reads 0,18 high at 300"));
        clock.setTo(at("2026-03-16T13:30"));
        for (String order : List.of("O-102", "O-104", "O-106", "O-113", "O-114", "O-116")) {
            hold(orderIds, order, HoldReason.OVEN_TRACE, "TC-07 read 7 °C high; the ageing run is in doubt", "TC-07");
        }
        clock.setTo(at("2026-03-12T08:00"));
        hold(orderIds, "O-116", HoldReason.CUSTOMER_PART, "customer's own shock not received, due 11 March", "by hand");
        clock.setTo(at("2026-03-18T08:26"));
        lotRegister.block(acts.by("TR"), "FL-4643-022", "the rod's maker wrote: some tubes may hold 5356 rods");
        clock.setTo(at("2026-03-18T08:28"));
        remarks.call(
                acts.by("SB"), null, null, "Jig J2: check overdue since 8 March, rear axles drift to the drive side.");
    }

    private void hold(Map<String, Long> orderIds, String order, HoldReason reason, String words, String source) {
        long traveller = travellers.ofOrder(orderIds.get(order)).stream()
                .filter(h -> h.part().isEmpty())
                .findFirst()
                .orElseThrow()
                .travellerId();
        holds.place(
                acts.by(reason == HoldReason.CUSTOMER_PART ? "DO" : "TR"),
                new Holds.Request(traveller, HoldScope.FRAME, null, reason, words, source, Set.of()));
    }

    private long whole(String serial) {
        return travellers.inForce(serial, "").travellerId();
    }

    private static Instant at(String local) {
        return LocalDateTime.parse(local).atZone(DemoOrder.ZONE).toInstant();
    }
}
