package org.trammel.shop.overview;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.shop.designs.DesignState;
import org.trammel.shop.designs.RevisionSummary;
import org.trammel.shop.orders.OrderSheet;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.stations.Station;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.web.Formats;

/** Puts the run of the shop together: a line for each open order, late ones first, then by promise. */
@Component
class RunOfTheShop {

    private final ShopFacts.Reader reader;
    private final Reasons reasons;
    private final Settings settings;
    private final Formats formats;

    RunOfTheShop(ShopFacts.Reader reader, Reasons reasons, Settings settings, Formats formats) {
        this.reader = reader;
        this.reasons = reasons;
        this.settings = settings;
        this.formats = formats;
    }

    Run now() {
        ShopFacts facts = reader.read();
        Map<String, Run.Load> loads = loads(facts);
        Map<Long, List<FrameSheet.Head>> byOrder = facts.heads().stream()
                .filter(h -> h.orderId() != null)
                .collect(Collectors.groupingBy(h -> Objects.requireNonNull(h.orderId())));
        List<RunLine> lines = new ArrayList<>();
        for (OrderSheet order : facts.orders()) {
            lines.add(line(order, byOrder.getOrDefault(order.id(), List.of()), facts, loads));
        }
        lines.sort(Comparator.comparing(RunLine::late)
                .reversed()
                .thenComparing(RunLine::promised, Comparator.nullsLast(Comparator.naturalOrder()))
                .thenComparing(RunLine::orderId));
        return new Run(lines, List.copyOf(loads.values()), facts.framesAtWork(), settings.whole("shop.frames.limit"));
    }

    private Map<String, Run.Load> loads(ShopFacts facts) {
        Map<String, Integer> counted = new LinkedHashMap<>();
        for (FrameSheet.Head head : facts.standing()) {
            if (head.currentStation() != null) {
                counted.merge(head.currentStation(), 1, Integer::sum);
            }
        }
        Map<String, Run.Load> loads = new LinkedHashMap<>();
        for (Station s : facts.stations()) {
            loads.put(s.code(), new Run.Load(s.code(), s.name(), counted.getOrDefault(s.code(), 0), s.wipLimit()));
        }
        return loads;
    }

    private RunLine line(
            OrderSheet order, List<FrameSheet.Head> travellers, ShopFacts facts, Map<String, Run.Load> loads) {
        Set<Long> parents = travellers.stream()
                .filter(h -> h.parentId() != null && h.currentOperationId() != null)
                .map(FrameSheet.Head::parentId)
                .collect(Collectors.toSet());
        List<FrameSheet.Head> standing = travellers.stream()
                .filter(h -> h.currentOperationId() != null && !parents.contains(h.travellerId()))
                .toList();
        boolean held = travellers.stream().anyMatch(h -> !facts.holdsOn(h).isEmpty())
                || standing.stream().anyMatch(facts::stopped);
        Here here = here(order, standing, travellers, held, facts);
        String serial = order.serial();
        Integer days = order.promised() == null
                ? null
                : Integer.valueOf((int) ChronoUnit.DAYS.between(settings.today(), order.promised()));
        return new RunLine(
                order.id(),
                order.number(),
                serial,
                serial == null ? order.number() : formats.mark(serial),
                travellers.isEmpty() && !ShopFacts.scrapped(order, travellers) || serial == null
                        ? "/orders/" + order.id()
                        : "/frames/" + serial,
                order.description(),
                order.metal(),
                here.station(),
                here.state(),
                here.kind(),
                order.ordered(),
                order.promised(),
                days,
                held,
                reasons.of(order, travellers, facts, loads),
                travellers.stream()
                        .map(h ->
                                Track.of(h, facts.strips().getOrDefault(h.travellerId(), List.of()), facts.stopped(h)))
                        .toList());
    }

    private record Here(String station, String state, String kind) {}

    private Here here(
            OrderSheet order,
            List<FrameSheet.Head> standing,
            List<FrameSheet.Head> travellers,
            boolean held,
            ShopFacts facts) {
        if (ShopFacts.scrapped(order, travellers)) {
            return new Here("Out of the shop", "scrapped", "scrap");
        }
        if (travellers.isEmpty()) {
            RevisionSummary drawing =
                    order.designId() == null ? null : facts.drawings().get(order.designId());
            boolean drawn = drawing != null && drawing.state() == DesignState.DRAFT;
            return new Here(Places.DESIGN_DESK, order.state().word(), drawn ? "in-work" : "waiting");
        }
        if (standing.isEmpty()) {
            return new Here("Ready to ship", "ready", "done");
        }
        Set<String> stations = new LinkedHashSet<>();
        Places places = new Places(facts.stations());
        standing.forEach(h -> stations.add(places.name(h.currentStation())));
        String where = String.join(", ", stations);
        if (standing.stream().anyMatch(facts::brokenOff)) {
            return new Here(where, "stopped", "stopped");
        }
        if (standing.stream().anyMatch(facts::stopped)) {
            return new Here(where, "on hold", "stopped");
        }
        List<OperationState> states = standing.stream()
                .map(facts::at)
                .filter(Objects::nonNull)
                .map(FrameSheet.OperationLine::state)
                .toList();
        if (states.contains(OperationState.IN_WORK)) {
            return new Here(where, "in work", "in-work");
        }
        if (states.contains(OperationState.AT_POINT)) {
            return new Here(where, "at a point to sign", "hold");
        }
        return states.contains(OperationState.AWAY)
                ? new Here(where, "sent out", "in-work")
                // Whoever promises asks for the order, and a hold further on holds that; the station goes on waiting.
                : held ? new Here(where, "on hold", "stopped") : new Here(where, "waiting", "waiting");
    }
}
