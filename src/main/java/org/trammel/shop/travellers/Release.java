package org.trammel.shop.travellers;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.designs.DesignSheet;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.designs.Nominal;
import org.trammel.shop.orders.OrderSheet;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.ChildSheet;
import org.trammel.shop.routes.Kinds;
import org.trammel.shop.routes.OperationSheet;
import org.trammel.shop.routes.RouteBook;
import org.trammel.shop.routes.RouteSheet;

/** Joins a released route and a checked design into a traveller, and freezes both in it. */
@Service
public class Release {

    private final TravellerRepository travellers;
    private final OperationRepository operations;
    private final StepRepository steps;
    private final CharacteristicRepository characteristics;
    private final FrameClockRepository clocks;
    private final Orders orders;
    private final Designs designs;
    private final RouteBook routes;
    private final FrameMarks marks;
    private final Crewed crewed;
    private final ObjectProvider<ShopLimits> shopLimits;
    private final ActLog log;

    Release(
            TravellerRepository travellers,
            OperationRepository operations,
            StepRepository steps,
            CharacteristicRepository characteristics,
            FrameClockRepository clocks,
            Orders orders,
            Designs designs,
            RouteBook routes,
            FrameMarks marks,
            Crewed crewed,
            ObjectProvider<ShopLimits> shopLimits,
            ActLog log) {
        this.travellers = travellers;
        this.operations = operations;
        this.steps = steps;
        this.characteristics = characteristics;
        this.clocks = clocks;
        this.orders = orders;
        this.designs = designs;
        this.routes = routes;
        this.marks = marks;
        this.crewed = crewed;
        this.shopLimits = shopLimits;
        this.log = log;
    }

    /**
     * Releases an order's frame to the shop: by the owner or the QA lead, on a design revision that is checked and a
     * route revision that is released.
     *
     * @return serial of the frame
     */
    @Transactional
    public String release(Act act, long orderId, long designRevisionId, long routeRevisionId) {
        OrderSheet before = orders.byId(orderId);
        if (!log.opens(act, "release", "order:" + orderId, Chains.order(before.number()))) {
            return orders.byId(orderId).serial();
        }
        requireReleaser(act, "Releasing order " + before.number());
        if (travellers.findByOrderIdOrderById(orderId).stream()
                .anyMatch(t -> t.state().open())) {
            throw Refusal.state(
                    "Order " + before.number() + " is not released again.",
                    "A traveller of it is in the shop already.",
                    "To change the drawing, release the new revision from the order's page; it takes the old traveller's place.");
        }
        if (travellers.findByOrderIdOrderById(orderId).stream()
                .anyMatch(t -> t.frame() && t.state() == TravellerState.SCRAPPED)) {
            throw Refusal.state(
                    "Order " + before.number() + " is not released again.",
                    "Its frame was scrapped, and a serial is borne by one frame only.",
                    "Enter a new order for the frame that takes its place; it gets a serial of its own.");
        }
        return make(act, orderId, designRevisionId, routeRevisionId).serial();
    }

    /** A frame is made to its own rider's drawing. */
    static void requireOwnDrawing(OrderSheet order, DesignSheet design) {
        if (!design.drawnFor().equals(order.number())) {
            throw Refusal.state(
                    "Order " + order.number() + " is not released.",
                    "Revision " + design.letter() + " is of the drawing for order " + design.drawnFor() + ".",
                    "Release a revision of the order's own drawing.");
        }
    }

    /** What was checked and signed is the characteristic list of one route revision. */
    private static void requireDrawnOn(DesignSheet design, RouteSheet route) {
        if (design.routeRevisionId() != null && design.routeRevisionId() != route.revisionId()) {
            throw Refusal.state(
                    "Revision " + design.letter() + " of the drawing is not released on route " + route.code() + ".",
                    "Its gate was signed for another revision of the route.",
                    "Release it on that one, or draw up the next revision of the drawing.");
        }
    }

    void requireReleaser(Act act, String deed) {
        Person person = crewed.signing(act.by(), deed);
        if (!person.is(Role.OWNER) && !person.is(Role.QA_LEAD)) {
            throw Refusal.person(
                    deed + " is not open to " + person.name() + ".",
                    "It is for the owner or the QA lead.",
                    "Call one of them.");
        }
    }

    /** Makes the travellers of a frame inside an act that is open; gives the one of the whole frame. */
    Traveller make(Act act, long orderId, long designRevisionId, long routeRevisionId) {
        RouteSheet route = routes.forFrames(routeRevisionId);
        DesignSheet checked = designs.revision(designRevisionId);
        requireOwnDrawing(orders.byId(orderId), checked);
        requireDrawnOn(checked, route);
        DesignSheet design = designs.release(act, designRevisionId, route);
        String serial = orders.assignSerial(act, orderId);
        OrderSheet order = orders.began(act, orderId, designRevisionId, route.code());
        String chain = Chains.frame(serial);
        log.opens(act, "release", "order:" + orderId, chain);
        marks.give(act, serial);
        Traveller whole = freeze(
                act,
                route,
                "",
                design.nominals(),
                new Traveller.Origin(
                        serial,
                        "",
                        null,
                        orderId,
                        order.number(),
                        designRevisionId,
                        design.letter(),
                        design.description()));
        for (ChildSheet child : route.children()) {
            freeze(
                    act,
                    child.route(),
                    child.part() + "/",
                    design.nominals(),
                    new Traveller.Origin(
                            serial,
                            child.part(),
                            whole.id(),
                            orderId,
                            order.number(),
                            designRevisionId,
                            design.letter(),
                            child.name() + ", " + design.description()));
        }
        log.event(
                chain,
                "released",
                Map.of(
                        "order", order.number(),
                        "design", designRevisionId,
                        "letter", design.letter(),
                        "route", routeRevisionId,
                        "parts", route.children().stream().map(ChildSheet::part).toList()));
        return whole;
    }

    /**
     * Releases the daily check of a station: a traveller that belongs to no order.
     *
     * @param name what it is called, such as the station's code and the day; at most 20 characters
     */
    @Transactional
    public void releaseCheck(Act act, String routeCode, String name) {
        if (!log.opens(act, "release station check", "check:" + name, Chains.SHOP)) {
            return;
        }
        crewed.worker(act.by(), "Beginning a station check");
        RouteSheet route = routes.released(routeCode);
        if (!route.kind().equals(Kinds.STATION_CHECK)) {
            throw Refusal.state(
                    "Route " + routeCode + " does not begin a station check.",
                    "It is a route of kind " + route.kind() + ".",
                    "Choose a route for station checks.");
        }
        if (!travellers.findBySerialOrderById(name).isEmpty()) {
            throw Refusal.stale(
                    "The check " + name + " is not begun again.",
                    "It was begun before.",
                    "Open it from the station's list.");
        }
        freeze(
                act,
                route,
                "",
                Map.of(),
                new Traveller.Origin(name, "", null, null, Traveller.NO_ORDER, null, route.letter(), route.name()));
        log.event(Chains.SHOP, "station check released", Map.of("name", name, "route", route.revisionId()));
    }

    private Traveller freeze(
            Act act, RouteSheet route, String prefix, Map<String, Nominal> nominals, Traveller.Origin origin) {
        Traveller traveller = travellers.save(
                new Traveller(origin, new Traveller.Frozen(route.revisionId(), route.metal(), route.kind()), act.at()));
        int position = 0;
        boolean sinceJoin = false;
        Operation first = null;
        for (OperationSheet sheet : route.operations()) {
            position += Operation.SPACING;
            sinceJoin |= sheet.joins();
            Operation operation = operations.save(new Operation(traveller.id(), position, sheet, sinceJoin));
            first = first == null ? operation : first;
            freezeContent(traveller, sheet, operation, prefix, nominals);
        }
        if (first == null) {
            throw Refusal.state(
                    "Route " + route.code() + " is not released to the shop.",
                    "It has no operation.",
                    "The QA lead adds operations in the route editor.");
        }
        route.clocks().forEach(sheet -> clocks.save(new FrameClock(traveller.id(), sheet)));
        traveller.standsAt(first);
        return traveller;
    }

    private void freezeContent(
            Traveller traveller,
            OperationSheet sheet,
            Operation operation,
            String prefix,
            Map<String, Nominal> nominals) {
        for (int i = 0; i < sheet.steps().size(); i++) {
            steps.save(new Step(operation.id(), i + 1, sheet.steps().get(i)));
        }
        for (int i = 0; i < sheet.characteristics().size(); i++) {
            CharacteristicSheet c = sheet.characteristics().get(i);
            Nominal given = nominals.get(prefix + c.code());
            characteristics.save(new Characteristic(
                    operation.id(), i + 1, c, ownLimits(traveller, c, given).orElseGet(() -> limits(c, given))));
        }
    }

    /** What the shop found out itself takes the place of limits that the route gives for every frame alike. */
    private Optional<Characteristic.Limits> ownLimits(
            Traveller traveller, CharacteristicSheet sheet, @Nullable Nominal given) {
        if (given != null || sheet.fromDesign() || sheet.nominal() != null) {
            return Optional.empty();
        }
        return shopLimits
                .orderedStream()
                .flatMap(one -> one.of(traveller.metal(), sheet).stream())
                .findFirst()
                .map(window -> {
                    log.event(
                            traveller.chain(),
                            "limits of the shop's own",
                            Map.of("characteristic", sheet.code(), "from", window.from()));
                    return new Characteristic.Limits(null, window.lower(), window.upper());
                });
    }

    /** Limits are nominal plus deviation; a characteristic without a nominal has its deviations as limits. */
    private static Characteristic.Limits limits(CharacteristicSheet sheet, @Nullable Nominal given) {
        if (given == null && sheet.fromDesign()) {
            throw Refusal.state(
                    "The frame is not released.",
                    "Characteristic " + sheet.code() + ", " + sheet.name()
                            + ", takes its nominal from the drawing, and the drawing gives none.",
                    "Enter the nominal in the design revision.");
        }
        BigDecimal nominal = given == null ? sheet.nominal() : given.nominal();
        boolean own = given != null && given.overridesLimits();
        return new Characteristic.Limits(
                nominal,
                limit(nominal, own ? given.lowerDeviation() : sheet.lowerDeviation()),
                limit(nominal, own ? given.upperDeviation() : sheet.upperDeviation()));
    }

    private static @Nullable BigDecimal limit(@Nullable BigDecimal nominal, @Nullable BigDecimal deviation) {
        if (deviation == null) {
            return null;
        }
        return nominal == null ? deviation : nominal.add(deviation);
    }

    /** The operations of a traveller, in order; for whoever compares two of them. */
    List<Operation> operationsOf(Traveller traveller) {
        return operations.findByTravellerIdOrderByPosition(traveller.id());
    }
}
