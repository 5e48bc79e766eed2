package org.trammel.shop.overview;

import java.time.Clock;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.designs.DrawingStates;
import org.trammel.shop.designs.RevisionSummary;
import org.trammel.shop.orders.OrderSheet;
import org.trammel.shop.orders.OrderState;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;
import org.trammel.shop.travellers.ClockView;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.OnTheFloor;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.TravellerState;
import org.trammel.shop.travellers.Travellers;

/**
 * What is true in the shop at this moment, read at once.
 *
 * @param strips operations by traveller
 * @param clocks clocks by traveller
 * @param coldSets clocks within which something may still be cold-set, by traveller
 * @param holds open holds by serial
 * @param freed operations that go on under a hold, by hold
 * @param points points that wait to be signed, by operation
 * @param drawings newest revision by design
 */
record ShopFacts(
        Instant now,
        List<OrderSheet> orders,
        List<FrameSheet.Head> heads,
        Map<Long, List<FrameSheet.OperationLine>> strips,
        Map<Long, List<ClockView>> clocks,
        Map<Long, Set<String>> coldSets,
        Map<String, List<FrameSheet.HoldLine>> holds,
        Map<Long, Set<Long>> freed,
        Map<Long, OnTheFloor.PointWaiting> points,
        Map<Long, RevisionSummary> drawings,
        List<Station> stations) {

    FrameSheet.@Nullable OperationLine at(FrameSheet.Head head) {
        return strips.getOrDefault(head.travellerId(), List.of()).stream()
                .filter(o -> Objects.equals(o.operationId(), head.currentOperationId()))
                .findFirst()
                .orElse(null);
    }

    /** Windows of a traveller that still matter. */
    List<Windows.Open> windows(FrameSheet.Head head) {
        long id = head.travellerId();
        return Windows.of(
                clocks.getOrDefault(id, List.of()),
                strips.getOrDefault(id, List.of()),
                coldSets.getOrDefault(id, Set.of()),
                now);
    }

    /** Open holds that concern a traveller: those of the frame, of the part, of any of its operations. */
    List<FrameSheet.HoldLine> holdsOn(FrameSheet.Head head) {
        return holds.getOrDefault(head.serial(), List.of()).stream()
                .filter(h -> h.scope() == HoldScope.FRAME
                        || h.scope() == HoldScope.PART
                                && (head.part().isEmpty() || Objects.equals(h.travellerId(), head.travellerId()))
                        || h.scope() == HoldScope.OPERATION && ofStrip(head, h.operationId()))
                .toList();
    }

    private boolean ofStrip(FrameSheet.Head head, @Nullable Long operationId) {
        return operation(head, operationId).findAny().isPresent();
    }

    /** Whether work on a traveller stands still: broken off, or held and not freed. A hold further on stops nothing yet. */
    boolean stopped(FrameSheet.Head head) {
        FrameSheet.OperationLine at = at(head);
        if (at == null) {
            return !holdsOn(head).isEmpty();
        }
        return at.state() == OperationState.STOPPED
                || holdsOn(head).stream()
                        .filter(h -> reaches(h, at))
                        .anyMatch(h -> !freed.getOrDefault(h.holdId(), Set.of()).contains(at.operationId()));
    }

    private static boolean reaches(FrameSheet.HoldLine hold, FrameSheet.OperationLine at) {
        return hold.scope() != HoldScope.OPERATION || Objects.equals(hold.operationId(), at.operationId());
    }

    /** Whether a hold is one of an operation of this traveller that is not at hand: it stops nothing yet. */
    boolean ahead(FrameSheet.HoldLine hold, FrameSheet.Head head) {
        FrameSheet.OperationLine at = at(head);
        return at != null && !reaches(hold, at) && ofStrip(head, hold.operationId());
    }

    /** Holds of operations further on in words, such as "hold at 110: oven trace". */
    List<String> heldAhead(FrameSheet.Head head) {
        return holdsOn(head).stream()
                .filter(h -> ahead(h, head))
                .flatMap(h -> operation(head, h.operationId())
                        .map(o -> "hold at " + o.code() + ": " + h.reason().word()))
                .distinct()
                .toList();
    }

    private Stream<FrameSheet.OperationLine> operation(FrameSheet.Head head, @Nullable Long operationId) {
        return strips.getOrDefault(head.travellerId(), List.of()).stream()
                .filter(o -> Objects.equals(o.operationId(), operationId));
    }

    /** Whole frames that were released and are not finished: what the shop limits. */
    int framesAtWork() {
        return (int) heads.stream()
                .filter(h -> h.parentId() == null && h.orderId() != null)
                .filter(h -> h.state() == TravellerState.RELEASED || h.state() == TravellerState.IN_WORK)
                .count();
    }

    /** Whether an order is owed a frame that nobody builds: it was released, and nothing of it is in the shop any more. */
    static boolean scrapped(OrderSheet order, List<FrameSheet.Head> inShop) {
        return inShop.isEmpty() && (order.state() == OrderState.IN_WORK || order.state() == OrderState.READY_TO_SHIP);
    }

    /** Whether the work a traveller stands at was broken off. */
    boolean brokenOff(FrameSheet.Head head) {
        FrameSheet.OperationLine at = at(head);
        return at != null && at.state() == OperationState.STOPPED;
    }

    /** Travellers that are worked on now: parts, and wholes that do not wait for their parts. */
    List<FrameSheet.Head> standing() {
        return standing(heads);
    }

    static List<FrameSheet.Head> standing(List<FrameSheet.Head> heads) {
        Set<Long> waitingForParts = heads.stream()
                .filter(h -> h.parentId() != null && h.currentOperationId() != null)
                .map(FrameSheet.Head::parentId)
                .collect(Collectors.toSet());
        return heads.stream()
                .filter(h -> h.currentOperationId() != null && !waitingForParts.contains(h.travellerId()))
                .toList();
    }

    /** Reads it. */
    @Component
    static class Reader {

        private final Orders orders;
        private final Travellers travellers;
        private final OnTheFloor floor;
        private final DrawingStates drawings;
        private final Stations stations;
        private final Clock clock;

        Reader(
                Orders orders,
                Travellers travellers,
                OnTheFloor floor,
                DrawingStates drawings,
                Stations stations,
                Clock clock) {
            this.orders = orders;
            this.travellers = travellers;
            this.floor = floor;
            this.drawings = drawings;
            this.stations = stations;
            this.clock = clock;
        }

        @Transactional(readOnly = true)
        ShopFacts read() {
            List<OrderSheet> open = orders.open();
            List<FrameSheet.Head> heads = travellers.inShop();
            List<Long> ids = heads.stream().map(FrameSheet.Head::travellerId).toList();
            List<FrameSheet.HoldLine> held = travellers.openHolds();
            Map<Long, OnTheFloor.PointWaiting> points = new HashMap<>();
            floor.points().forEach(p -> points.put(p.operation().operationId(), p));
            Set<Long> designs = new HashSet<>();
            open.stream().map(OrderSheet::designId).filter(Objects::nonNull).forEach(designs::add);
            return new ShopFacts(
                    clock.instant(),
                    open,
                    heads,
                    travellers.strips(ids),
                    travellers.clocks(ids),
                    floor.coldSetsLeft(ids),
                    held.stream().collect(Collectors.groupingBy(FrameSheet.HoldLine::serial)),
                    floor.freed(held.stream().map(FrameSheet.HoldLine::holdId).toList()),
                    points,
                    drawings.newest(designs),
                    stations.all());
        }
    }
}
