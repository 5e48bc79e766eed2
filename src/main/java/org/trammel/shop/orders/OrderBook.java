package org.trammel.shop.orders;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.designs.DesignState;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.designs.DrawingOffice;
import org.trammel.shop.designs.NewDesign;
import org.trammel.shop.designs.RevisionSummary;
import org.trammel.shop.designs.Unusual;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/** What the owner does with an order at the desk. */
@Service
@Transactional
public class OrderBook {

    private final RiderRepository riders;
    private final OwnPartRepository parts;
    private final OrderCostRepository costs;
    private final OrderAct opening;
    private final OrderTerms terms;
    private final Orders orders;
    private final Designs designs;
    private final DrawingOffice drawings;
    private final ObjectProvider<UnderWay> underWay;
    private final ApplicationEventPublisher events;

    OrderBook(
            RiderRepository riders,
            OwnPartRepository parts,
            OrderCostRepository costs,
            OrderAct opening,
            OrderTerms terms,
            Orders orders,
            Designs designs,
            DrawingOffice drawings,
            ObjectProvider<UnderWay> underWay,
            ApplicationEventPublisher events) {
        this.riders = riders;
        this.parts = parts;
        this.costs = costs;
        this.opening = opening;
        this.terms = terms;
        this.orders = orders;
        this.designs = designs;
        this.drawings = drawings;
        this.underWay = underWay;
        this.events = events;
    }

    /**
     * Changes what was ordered, before the frame is released.
     *
     * @param seenVersion version of the order on the page; null to skip the comparison
     */
    public OrderSheet change(Act act, long orderId, @Nullable Long seenVersion, OrderDetails typed, boolean confirmed) {
        opening.open(act, OrderVerb.CHANGE, orderId).ifPresent(order -> {
            String deed = OrderVerb.CHANGE.undone(order.number());
            if (seenVersion != null && seenVersion != order.version()) {
                throw Refusal.stale(
                        deed,
                        "Somebody changed it after this page was loaded.",
                        "Open it as it is now beside this page, compare, and enter there what is still wanted.");
            }
            Rider rider = riders.findById(orderId).orElseGet(() -> new Rider(orderId));
            Unusual unusual = new Unusual();
            OrderDetails details = OrderCheck.details(deed, typed, rider.details(), unusual);
            unusual.ask(deed, confirmed);
            OrderCheck.refuseRepairOfNothing(deed, details, order.sheet().returnedFrame());
            order.change(details);
            rider.tell(details.rider());
            riders.save(rider);
            opening.event(
                    order,
                    "order-changed",
                    Map.of("metal", details.metal(), "kind", details.kind(), "country", details.country()));
        });
        return orders.byId(orderId);
    }

    /** Promises another date, with the reason; those before it are kept. */
    public OrderSheet promise(
            Act act, long orderId, LocalDate on, @Nullable BigDecimal percentile, String reason, boolean confirmed) {
        opening.open(act, OrderVerb.PROMISE, orderId).ifPresent(order -> {
            String why = TypedText.words("reason", "The reason", OrderVerb.PROMISE.undone(order.number()), reason);
            terms.promise(act, OrderVerb.PROMISE.undone(order.number()), order, on, percentile, why, confirmed);
        });
        return orders.byId(orderId);
    }

    /** Agrees another price, with the reason; those before it are kept. */
    public OrderSheet price(Act act, long orderId, BigDecimal amount, String reason, boolean confirmed) {
        opening.open(act, OrderVerb.PRICE, orderId).ifPresent(order -> {
            String why = TypedText.words("reason", "The reason", OrderVerb.PRICE.undone(order.number()), reason);
            terms.price(act, OrderVerb.PRICE.undone(order.number()), order, amount, why, confirmed);
        });
        return orders.byId(orderId);
    }

    /** Begins the drawing: a design of its own, with what the order says. */
    public RevisionSummary beginDesign(Act act, long orderId) {
        Optional<ShopOrder> opened = opening.open(act, OrderVerb.DESIGN, orderId);
        if (opened.isEmpty()) {
            Long known = Optional.ofNullable(orders.byId(orderId).designId()).orElseThrow();
            return designs.revisions(known).get(0);
        }
        ShopOrder order = opened.get();
        OrderDetails details = order.details(RiderDetails.UNKNOWN);
        RevisionSummary first = designs.begin(
                act,
                new NewDesign(
                        order.number(), details.metal(), details.kind(), details.description(), details.components()));
        order.design(first.designId());
        opening.event(order, "order-designing", Map.of("design", first.designId()));
        return first;
    }

    /** Enters a cost by hand at the desk. */
    public void enterCost(
            Act act,
            long orderId,
            CostKind kind,
            @Nullable BigDecimal hours,
            @Nullable BigDecimal amount,
            String reason,
            boolean confirmed) {
        opening.open(act, "add-cost", orderId).ifPresent(order -> {
            opening.require(act, "No cost was added to " + order.number() + ".", Role.OWNER, Role.QA_LEAD);
            askIfBelowZero(order, "hours", hours, confirmed);
            askIfBelowZero(order, "amount", amount, confirmed);
            orders.addCost(act, orderId, kind, hours, amount, reason);
        });
    }

    /** A cost below zero is a correction, or a slip of the hand. */
    private static void askIfBelowZero(ShopOrder order, String field, @Nullable BigDecimal figure, boolean confirmed) {
        if (!confirmed && figure != null && figure.signum() < 0) {
            throw Refusal.ask(
                    field,
                    "No cost was added to " + order.number() + ".",
                    figure.toPlainString() + " is below 0 and would take cost away from the order.",
                    "Confirm it if it corrects an earlier entry.");
        }
    }

    /**
     * Calls an order off. What runs for it is told first and must be confirmed; drawings not yet released are
     * withdrawn.
     */
    public OrderSheet cancel(Act act, long orderId, String typed, boolean confirmed) {
        opening.open(act, OrderVerb.CANCEL, orderId).ifPresent(order -> {
            String deed = OrderVerb.CANCEL.undone(order.number());
            String reason = TypedText.words("reason", "The reason", deed, typed);
            List<String> running = running(order);
            if (!running.isEmpty() && !confirmed) {
                throw Refusal.ask(
                        "reason",
                        deed,
                        "Still under way: " + String.join("; ", running) + ".",
                        "Settle these first, or confirm that the order is called off as it stands.");
            }
            withdrawDrawings(act, order, reason);
            order.cancel(act, opening.keep(order, "order-cancelled", reason));
            events.publishEvent(new OrderEvent.Cancelled(act, orderId));
        });
        return orders.byId(orderId);
    }

    private void withdrawDrawings(Act act, ShopOrder order, String reason) {
        Long design = order.designId();
        if (design == null) {
            return;
        }
        designs.revisions(design).stream()
                .filter(revision -> revision.state() == DesignState.DRAFT
                        || revision.state() == DesignState.SENT
                        || revision.state() == DesignState.APPROVED
                        || revision.state() == DesignState.CHECKED)
                .forEach(revision -> drawings.withdraw(act, revision.revisionId(), reason));
    }

    /** What somebody should know before the order is called off. */
    List<String> running(ShopOrder order) {
        List<String> running = new ArrayList<>();
        Long design = order.designId();
        if (design != null) {
            designs.revisions(design).stream()
                    .filter(revision ->
                            revision.state() != DesignState.SUPERSEDED && revision.state() != DesignState.WITHDRAWN)
                    .forEach(revision -> running.add("drawing " + revision.letter() + " is "
                            + revision.state().word()));
        }
        if (order.serial() != null) {
            running.add("the frame has serial " + order.serial());
        }
        parts.findByOrderIdOrderById(order.id()).stream()
                .filter(part -> part.state() == OwnPart.State.WITH_US)
                .forEach(part -> running.add("the customer's " + part.what() + " is with us"));
        int entries = costs.findByOrderIdOrderById(order.id()).size();
        if (entries > 0) {
            running.add(entries + " costs are entered");
        }
        underWay.orderedStream().forEach(module -> running.addAll(module.of(order.sheet())));
        return running;
    }

    /** The frame came back; work on it runs on a repair order. */
    public OrderSheet takeBack(Act act, long orderId) {
        opening.open(act, OrderVerb.TAKE_BACK, orderId).ifPresent(order -> {
            order.takeBack(act);
            opening.event(order, "frame-returned", Map.of());
        });
        return orders.byId(orderId);
    }
}
