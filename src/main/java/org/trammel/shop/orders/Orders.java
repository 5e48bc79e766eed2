package org.trammel.shop.orders;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Person;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.settings.Settings;

/** The orders of the shop, for the modules that build what was ordered. */
@Service
@Transactional
public class Orders {

    private static final BigDecimal MOST_HOURS = BigDecimal.valueOf(1000);
    private static final BigDecimal MOST_MONEY = BigDecimal.valueOf(1_000_000);
    private static final Set<OrderState> OPEN = EnumSet.allOf(OrderState.class);

    static {
        OPEN.removeIf(state -> !state.open());
    }

    private final ShopOrderRepository orders;
    private final OrderCostRepository costs;
    private final OrderAct opening;
    private final Serials serials;
    private final Settings settings;

    Orders(
            ShopOrderRepository orders,
            OrderCostRepository costs,
            OrderAct opening,
            Serials serials,
            Settings settings) {
        this.orders = orders;
        this.costs = costs;
        this.opening = opening;
        this.serials = serials;
        this.settings = settings;
    }

    /**
     * One order.
     *
     * @throws Refusal if there is none with that id
     */
    @Transactional(readOnly = true)
    public OrderSheet byId(long orderId) {
        return opening.load(orderId).sheet();
    }

    /** The order with that number, such as O-042. */
    @Transactional(readOnly = true)
    public Optional<OrderSheet> byNumber(String number) {
        return orders.findByNumber(number).map(ShopOrder::sheet);
    }

    /** The orders a frame had, newest first; more than one where it came back. */
    @Transactional(readOnly = true)
    public List<OrderSheet> bySerial(String serial) {
        return orders.findBySerialOrderByIdDesc(serial).stream()
                .map(ShopOrder::sheet)
                .toList();
    }

    /** Whether somebody is told who the customers are. */
    public static boolean showsCustomersTo(Person reader) {
        return OrderReading.seesCustomers(reader);
    }

    /**
     * Numbers of orders whose customer is called so or reached so, 50 at most, newest first; none for whoever is not
     * told who the customers are, and none for less than three letters.
     */
    @Transactional(readOnly = true)
    public List<String> numbersOfCustomers(String typed, Person reader) {
        String part = typed.strip().toLowerCase(Locale.ROOT);
        if (part.length() < 3 || !showsCustomersTo(reader)) {
            return List.of();
        }
        return orders.numbersOfCustomers("%" + part.replaceAll("[!%_]", "!$0") + "%", Limit.of(50));
    }

    /** Every order whose frame the shop still owes, by promised date. */
    @Transactional(readOnly = true)
    public List<OrderSheet> open() {
        return orders.inStates(OPEN).stream().map(ShopOrder::sheet).toList();
    }

    /**
     * The serial of the order's frame: the next free one, or the one it already has (a returned frame keeps its own).
     * Called at release, in the same transaction.
     *
     * @return stored form such as AB270423
     */
    public String assignSerial(Act act, long orderId) {
        return serial(act, OrderVerb.ASSIGN_SERIAL, orderId);
    }

    /** The serial given ahead of the release, for a frame that needs its number before: a tag, a drawing. */
    public String reserveSerial(Act act, long orderId) {
        return serial(act, OrderVerb.RESERVE_SERIAL, orderId);
    }

    private String serial(Act act, OrderVerb verb, long orderId) {
        ShopOrder order = opening.open(act, verb, orderId).orElseGet(() -> opening.load(orderId));
        String known = order.serial();
        return known != null ? known : serials.give(act, order);
    }

    /** The traveller was released: approved, or in work for a later revision, to in work. */
    public OrderSheet began(Act act, long orderId, long designRevisionId, String routeCode) {
        return moved(act, OrderVerb.BEGIN, orderId, "order-began", order -> {
            if (order.serial() == null) {
                throw Refusal.state(
                        OrderVerb.BEGIN.undone(order.number()),
                        "Its frame has no serial.",
                        "Give it a serial, then release it.");
            }
            order.begin(act, designRevisionId, routeCode);
        });
    }

    /** The last gate before sending is signed: in work to ready to ship. */
    public OrderSheet finished(Act act, long orderId) {
        return moved(act, OrderVerb.FINISH, orderId, "order-finished", order -> order.finish(act));
    }

    /** A gate was opened again after the frame was finished: ready to ship back to in work. */
    public OrderSheet reopened(Act act, long orderId) {
        return moved(act, OrderVerb.REOPEN, orderId, "order-reopened", ShopOrder::reopen);
    }

    /** The frame left: ready to ship to shipped. */
    public OrderSheet shipped(Act act, long orderId) {
        return moved(act, OrderVerb.SHIP, orderId, "order-shipped", order -> order.ship(act));
    }

    private OrderSheet moved(Act act, OrderVerb verb, long orderId, String event, Consumer<ShopOrder> move) {
        Optional<ShopOrder> opened = opening.open(act, verb, orderId);
        opened.ifPresent(order -> {
            move.accept(order);
            opening.event(order, event, Map.of("state", order.state().name()));
        });
        return opened.orElseGet(() -> opening.load(orderId)).sheet();
    }

    /**
     * Adds to what the order cost so far. Who may is asked by the caller.
     *
     * @param hours hours of work, null if none; they count with the shop's rate of today
     * @param amount in the shop's currency, null if none
     * @param reason in a few words; kept beside the log, not in it
     */
    public void addCost(
            Act act,
            long orderId,
            CostKind kind,
            @Nullable BigDecimal hours,
            @Nullable BigDecimal amount,
            String reason) {
        opening.open(act, "add-cost", orderId).ifPresent(order -> {
            String deed = "No cost was added to " + order.number() + ".";
            if (hours == null && amount == null) {
                throw Refusal.input("hours", deed, "Neither hours nor an amount were given.", "Enter one of them.");
            }
            within("hours", "Hours", deed, hours, MOST_HOURS);
            within("amount", "The amount", deed, amount, MOST_MONEY);
            String why = TypedText.words("reason", "The reason", deed, reason);
            OrderCost cost = costs.save(new OrderCost(
                    orderId,
                    kind,
                    hours,
                    hours == null ? null : settings.number("cost.hour"),
                    amount,
                    settings.currency().getCurrencyCode(),
                    opening.keep(order, "cost-reasoned", why),
                    act));
            Map<String, Object> facts = new HashMap<>();
            facts.put("cost", cost.id());
            facts.put("kind", kind.name());
            facts.put("hours", hours == null ? "" : hours.toPlainString());
            facts.put("amount", amount == null ? "" : amount.toPlainString());
            opening.event(order, "cost-added", facts);
        });
    }

    private static void within(String field, String label, String deed, @Nullable BigDecimal value, BigDecimal most) {
        if (value == null) {
            return;
        }
        if (value.signum() == 0
                || value.abs().compareTo(most) > 0
                || Plain.number(value).scale() > 2) {
            throw Refusal.input(
                    field,
                    deed,
                    label + " of " + value.toPlainString() + " cannot be: not zero, at most " + most.toPlainString()
                            + ", two decimals.",
                    "A correction is entered with a minus.");
        }
    }
}
