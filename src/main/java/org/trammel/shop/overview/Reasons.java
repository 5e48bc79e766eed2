package org.trammel.shop.overview;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.shop.designs.RevisionSummary;
import org.trammel.shop.orders.OrderSheet;
import org.trammel.shop.orders.OrderState;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.ClockView;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OnTheFloor;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.TravellerState;
import org.trammel.shop.web.Formats;

/** Says in words why an order stands where it stands, from what is on record and from nothing else. */
@Component
class Reasons {

    private static final String NONCONFORMANCE = "NC-";

    private final Formats formats;

    Reasons(Formats formats) {
        this.formats = formats;
    }

    /** The reasons of an order, the weightiest first. */
    List<String> of(OrderSheet order, List<FrameSheet.Head> travellers, ShopFacts facts, Map<String, Run.Load> loads) {
        if (ShopFacts.scrapped(order, travellers)) {
            return List.of("frame scrapped: call the order off, or enter a new one");
        }
        if (travellers.isEmpty()) {
            return List.of(beforeRelease(order, facts));
        }
        Set<String> reasons = new LinkedHashSet<>();
        List<FrameSheet.Head> standing = travellers.stream()
                .filter(h -> h.currentOperationId() != null)
                .sorted((a, b) -> Boolean.compare(a.part().isEmpty(), b.part().isEmpty()))
                .toList();
        reasons.addAll(holds(order, travellers, facts));
        reasons.addAll(windows(standing, facts));
        standing.forEach(h -> operation(h, facts, reasons));
        reasons.addAll(waits(standing, facts));
        standing.forEach(h -> queue(h, facts, loads, reasons));
        if (standing.isEmpty()
                && travellers.stream().anyMatch(h -> h.part().isEmpty() && h.state() == TravellerState.FINISHED)) {
            reasons.add("ready to ship");
        }
        return List.copyOf(reasons);
    }

    private String beforeRelease(OrderSheet order, ShopFacts facts) {
        RevisionSummary drawing =
                order.designId() == null ? null : facts.drawings().get(order.designId());
        if (order.state() == OrderState.ORDERED || drawing == null) {
            return "nothing drawn yet";
        }
        String revision = "revision " + drawing.letter();
        return switch (drawing.state()) {
            case DRAFT -> revision + " being drawn";
            case SENT -> revision + " with the customer since " + formats.day(drawing.sentAt());
            case APPROVED -> revision + " approved, design gate to sign";
            case CHECKED -> revision + " checked, to be released";
            case RELEASED -> revision + " released";
            case SUPERSEDED -> revision + " superseded";
            case WITHDRAWN -> revision + " given up, another to draw";
        };
    }

    private List<String> holds(OrderSheet order, List<FrameSheet.Head> travellers, ShopFacts facts) {
        List<String> said = new ArrayList<>();
        Set<String> plain = new LinkedHashSet<>();
        String serial = travellers.get(0).serial();
        for (FrameSheet.HoldLine hold : facts.holds().getOrDefault(serial, List.of())) {
            if (hold.source().startsWith(NONCONFORMANCE)) {
                said.add(hold.source() + " to decide");
            } else if (travellers.stream().noneMatch(h -> facts.ahead(hold, h))) {
                plain.add(hold.reason().word());
            }
        }
        if (!plain.isEmpty()) {
            said.add("held: " + String.join(", ", plain));
        }
        travellers.stream().flatMap(h -> facts.heldAhead(h).stream()).distinct().forEach(said::add);
        return said;
    }

    private List<String> windows(List<FrameSheet.Head> standing, ShopFacts facts) {
        List<String> said = new ArrayList<>();
        for (FrameSheet.Head head : standing) {
            for (Windows.Open w : facts.windows(head)) {
                String what = w.gate().isEmpty() ? w.name() : w.gate();
                said.add(prefix(head)
                        + (w.closed()
                                ? lower(w.name()) + " ran out " + formats.moment(w.endsAt())
                                : lower(what) + " by " + formats.moment(w.endsAt())));
            }
        }
        return said;
    }

    private List<String> waits(List<FrameSheet.Head> standing, ShopFacts facts) {
        List<String> said = new ArrayList<>();
        for (FrameSheet.Head head : standing) {
            for (ClockView clock : facts.clocks().getOrDefault(head.travellerId(), List.of())) {
                if (clock.waitingAt(facts.now())) {
                    said.add(prefix(head) + lower(clock.name()) + " until " + formats.moment(clock.endsAt()));
                }
            }
        }
        return said;
    }

    private void operation(FrameSheet.Head head, ShopFacts facts, Set<String> reasons) {
        FrameSheet.OperationLine at = facts.at(head);
        if (at == null) {
            return;
        }
        if (at.loop() > 0) {
            reasons.add(prefix(head) + "rework loop " + at.loop() + ", " + lower(at.name()));
        }
        if (at.state() == OperationState.STOPPED) {
            reasons.add(prefix(head) + "stopped" + (at.stateReason() == null ? "" : ": " + at.stateReason()));
        } else if (at.state() == OperationState.AWAY) {
            reasons.add(prefix(head) + "sent out for " + lower(at.name()));
        } else if (at.state() == OperationState.AT_POINT) {
            OnTheFloor.PointWaiting point = facts.points().get(at.operationId());
            List<Signer> missing = point == null ? List.of() : point.missing();
            if (!missing.isEmpty()) {
                reasons.add(prefix(head) + at.code() + " to be signed by "
                        + missing.stream().map(Signer::word).collect(Collectors.joining(", ")));
            }
        }
    }

    private void queue(FrameSheet.Head head, ShopFacts facts, Map<String, Run.Load> loads, Set<String> reasons) {
        FrameSheet.OperationLine at = facts.at(head);
        Run.Load load = at == null ? null : loads.get(at.station());
        if (load != null && load.over() && Objects.requireNonNull(at).state() == OperationState.WAITING) {
            reasons.add(load.standing() + " at " + load.name() + ", limit " + load.limit());
        }
    }

    private static String prefix(FrameSheet.Head head) {
        return head.part().isEmpty() ? "" : head.part() + " ";
    }

    private static String lower(String name) {
        boolean word = name.length() > 1 && Character.isLowerCase(name.charAt(1));
        return word ? name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1) : name;
    }
}
