package org.trammel.shop.orders;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.Words;
import org.trammel.shop.settings.Settings;

/** Customers and what they told about themselves. */
@Service
@Transactional
public class Customers {

    private final CustomerRepository customers;
    private final ShopOrderRepository orders;
    private final RiderRepository riders;
    private final OrderChangeRepository changes;
    private final OrderedColoursRepository colours;
    private final Designs designs;
    private final ActLog log;
    private final Crew crew;
    private final Words words;
    private final Settings settings;
    private final ApplicationEventPublisher events;

    Customers(
            CustomerRepository customers,
            ShopOrderRepository orders,
            RiderRepository riders,
            OrderChangeRepository changes,
            OrderedColoursRepository colours,
            Designs designs,
            ActLog log,
            Crew crew,
            Words words,
            Settings settings,
            ApplicationEventPublisher events) {
        this.customers = customers;
        this.orders = orders;
        this.riders = riders;
        this.changes = changes;
        this.colours = colours;
        this.designs = designs;
        this.log = log;
        this.crew = crew;
        this.words = words;
        this.settings = settings;
        this.events = events;
    }

    /** Corrects what a customer told. */
    public void correct(Act act, long customerId, CustomerDetails typed) {
        String deed = "The customer's data was not changed.";
        if (!log.opens(act, "correct-customer", "customer:" + customerId, Chains.SHOP)) {
            return;
        }
        crew.require(act.by(), deed, Role.OWNER);
        Customer customer = load(customerId, deed);
        customer.tell(OrderCheck.customer(deed, typed, settings.dayOf(act.at())));
        log.event(Chains.SHOP, "customer-corrected", Map.of("customer", customerId, "customerSeal", customer.seal()));
    }

    /**
     * Erases what a customer told: name, contact, rider, wishes, who approved. Orders, frames and the log stay as they
     * are; the log never held any of it.
     */
    public void erase(Act act, long customerId) {
        String deed = "The customer's data was not erased.";
        List<ShopOrder> theirs = orders.findByCustomerIdOrderById(customerId);
        String[] chains = Stream.concat(
                        Stream.of(Chains.SHOP), theirs.stream().map(order -> Chains.order(order.number())))
                .toArray(String[]::new);
        if (!log.opens(act, "erase-customer", "customer:" + customerId, chains)) {
            return;
        }
        crew.require(act.by(), deed, Role.OWNER);
        Customer customer = load(customerId, deed);
        for (ShopOrder order : theirs) {
            if (order.state().open()) {
                throw Refusal.state(
                        deed,
                        order.number() + " is " + order.state().word()
                                + "; the shop needs to reach the customer until it is shipped.",
                        "Ship or cancel the order first.");
            }
        }
        customer.erase(act.at());
        for (ShopOrder order : theirs) {
            riders.findById(order.id()).ifPresent(riders::delete);
            changes.findByOrderIdOrderById(order.id()).forEach(change -> {
                words.erase(act, change.askedWords());
                Long answer = change.answerWords();
                if (answer != null) {
                    words.erase(act, answer);
                }
            });
            colours.findByOrderIdOrderById(order.id()).forEach(named -> {
                Long reason = named.reasonWords();
                if (reason != null) {
                    words.erase(act, reason);
                }
            });
            Long design = order.designId();
            if (design != null) {
                designs.forgetApprovers(act, design);
            }
            if (order.serial() != null) {
                events.publishEvent(new CustomerErased(act, order.serial()));
            }
            log.event(Chains.order(order.number()), "customer-erased", Map.of("customer", customerId));
        }
        log.event(Chains.SHOP, "customer-erased", Map.of("customer", customerId));
    }

    private Customer load(long customerId, String deed) {
        Customer customer = customers.findById(customerId).orElseThrow(() -> missing(deed, customerId));
        if (customer.erasedAt() != null) {
            throw Refusal.state(deed, "It was erased before.", "Enter the customer anew if they order again.");
        }
        return customer;
    }

    static Refusal missing(String deed, long customerId) {
        return Refusal.missing(deed, "No customer has the number " + customerId + ".", "Open one from an order.");
    }
}
