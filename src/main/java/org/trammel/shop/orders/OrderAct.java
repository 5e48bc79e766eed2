package org.trammel.shop.orders;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.Words;
import org.trammel.shop.records.WordsRef;

/** Opens an act on an order: log first, then who may and from which state. */
@Component
class OrderAct {

    static final String GIVE_BACK = "give-back-own-part";
    static final String REPLACE = "replace-own-part";

    private static final Set<String> REACH_THE_FRAME = Set.of(OrderVerb.CANCEL.act(), GIVE_BACK, REPLACE);

    private final ShopOrderRepository orders;
    private final ActLog log;
    private final Crew crew;
    private final Words words;

    OrderAct(ShopOrderRepository orders, ActLog log, Crew crew, Words words) {
        this.orders = orders;
        this.log = log;
        this.crew = crew;
        this.words = words;
    }

    /** The order to act on; empty if this act was carried out before. */
    Optional<ShopOrder> open(Act act, OrderVerb verb, long orderId) {
        Optional<ShopOrder> opened = open(act, verb.act(), orderId);
        opened.ifPresent(order -> {
            if (verb.by().length > 0) {
                crew.require(act.by(), verb.undone(order.number()), verb.by());
            }
            verb.refuseUnless(order.number(), order.state());
        });
        return opened;
    }

    /** The same for a deed that any state allows. */
    Optional<ShopOrder> open(Act act, String kind, long orderId) {
        String number = orders.numberOf(orderId).orElseThrow(() -> missing(orderId));
        // A deed that stops work, or ends a wait, reaches the frame too; its chain is locked together with the order's,
        // in order.
        String[] chains = REACH_THE_FRAME.contains(kind)
                ? Stream.concat(Stream.of(Chains.order(number)), orders.serialOf(orderId).map(Chains::frame).stream())
                        .toArray(String[]::new)
                : new String[] {Chains.order(number)};
        if (!log.opens(act, kind, "order:" + orderId, chains)) {
            return Optional.empty();
        }
        return Optional.of(load(orderId));
    }

    ShopOrder load(long orderId) {
        return orders.findById(orderId).orElseThrow(() -> missing(orderId));
    }

    void require(Act act, String deed, Role... any) {
        crew.require(act.by(), deed, any);
    }

    void event(ShopOrder order, String what, Map<String, ?> facts) {
        Map<String, Object> all = new TreeMap<>(facts);
        all.put("order", order.id());
        log.event(Chains.order(order.number()), what, all);
    }

    /** Keeps what somebody wrote, and writes its id and salted hash as an event. */
    long keep(ShopOrder order, String what, String text) {
        WordsRef kept = words.keep(text);
        event(order, what, Map.of("words", kept.id(), "sha256", kept.sha256()));
        return kept.id();
    }

    private static Refusal missing(long orderId) {
        return Refusal.missing(
                "The order was not found.", "No order has the id " + orderId + ".", "Open it from the list of orders.");
    }
}
