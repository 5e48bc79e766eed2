package org.trammel.shop.orders;

import java.security.SecureRandom;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.designs.Unusual;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

/** Enters an order with everything the customer said, in one act. */
@Service
public class OrderEntry {

    private static final Pattern NUMBER = Pattern.compile("([A-Z]{1,3})-?0*([0-9]{1,6})");
    private static final String SERIES = "O-";
    private static final SecureRandom RANDOM = new SecureRandom();

    private final ShopOrderRepository orders;
    private final CustomerRepository customers;
    private final RiderRepository riders;
    private final OwnPartRepository parts;
    private final OrderSeriesRepository series;
    private final OrderTerms terms;
    private final Serials serials;
    private final OrderAct opening;
    private final ActLog log;
    private final Crew crew;
    private final Settings settings;

    OrderEntry(
            ShopOrderRepository orders,
            CustomerRepository customers,
            RiderRepository riders,
            OwnPartRepository parts,
            OrderSeriesRepository series,
            OrderTerms terms,
            Serials serials,
            OrderAct opening,
            ActLog log,
            Crew crew,
            Settings settings) {
        this.orders = orders;
        this.customers = customers;
        this.riders = riders;
        this.parts = parts;
        this.series = series;
        this.terms = terms;
        this.serials = serials;
        this.opening = opening;
        this.log = log;
        this.crew = crew;
        this.settings = settings;
    }

    /** Enters an order; only the owner takes one. */
    @Transactional
    public OrderSheet enter(Act act, NewOrder typed) {
        String deed = "The order was not entered.";
        OrderSeries counter = series.lock().orElseGet(() -> series.save(new OrderSeries(UUID.randomUUID())));
        Optional<ShopOrder> entered = orders.findByEnteredAct(act.id());
        if (entered.isPresent()) {
            return entered.get().sheet();
        }
        String number = number(deed, counter, typed.number());
        log.opens(act, "enter-order", "order:" + number, Chains.order(number));
        crew.require(act.by(), deed, Role.OWNER);
        Unusual unusual = new Unusual();
        OrderDetails details = OrderCheck.details(deed, typed.details(), RiderDetails.UNKNOWN, unusual);
        if (typed.promised() != null) {
            terms.noteDay(act, typed.promised(), unusual);
        }
        if (typed.price() != null) {
            terms.notePrice(typed.price(), unusual);
        }
        unusual.ask(deed, typed.confirmed());
        OrderCheck.refuseRepairOfNothing(deed, details, typed.returnedSerial() != null);
        if (typed.percentile() != null) {
            OrderTerms.requireKeepable(deed, typed.percentile());
            terms.requireDayFor(deed, typed.percentile(), typed.promised());
        }
        Customer customer = customer(act, deed, typed);
        ShopOrder order = orders.save(new ShopOrder(
                number, customer.id(), details, settings.currency().getCurrencyCode(), act));
        Rider rider = new Rider(order.id());
        rider.tell(details.rider());
        riders.save(rider);
        typed.ownParts().forEach(part -> parts.save(new OwnPart(order.id(), OrderCheck.ownPart(deed, part))));
        opening.event(order, "order-entered", facts(order, customer, details));
        if (typed.returnedSerial() != null) {
            cameBack(act, deed, order, typed.returnedSerial());
        }
        if (typed.promised() != null) {
            terms.promise(act, deed, order, typed.promised(), typed.percentile(), "First promise", true);
        }
        if (typed.price() != null) {
            terms.price(act, deed, order, typed.price(), "First price", true);
        }
        return order.sheet();
    }

    private static Map<String, Object> facts(ShopOrder order, Customer customer, OrderDetails details) {
        Map<String, Object> facts = new HashMap<>();
        facts.put("number", order.number());
        facts.put("customer", customer.id());
        facts.put("customerSeal", customer.seal());
        facts.put("metal", details.metal());
        facts.put("kind", details.kind());
        facts.put("country", details.country());
        return facts;
    }

    private Customer customer(Act act, String deed, NewOrder typed) {
        Long known = typed.customerId();
        if (known != null && typed.customer() != null) {
            throw Refusal.input(
                    "customer.name",
                    deed,
                    "A customer is chosen and another one is typed beside.",
                    "Choose a customer, or enter a new one; not both.");
        }
        if (known != null) {
            Customer customer = customers
                    .findById(known)
                    .orElseThrow(() -> Refusal.input(
                            "customerId",
                            deed,
                            "No customer has the number " + known + ".",
                            "Choose one from the list, or enter a new one."));
            if (customer.erasedAt() != null) {
                throw Refusal.input(
                        "customerId",
                        deed,
                        "This customer's data was erased.",
                        "Enter the customer anew if they order again.");
            }
            return customer;
        }
        CustomerDetails details = typed.customer();
        if (details == null) {
            throw Refusal.input("customer.name", deed, "No customer is named.", "Enter the customer.");
        }
        return customers.save(new Customer(OrderCheck.customer(deed, details, settings.dayOf(act.at())), salt()));
    }

    private String number(String deed, OrderSeries counter, @Nullable String typed) {
        if (typed == null || typed.isBlank()) {
            return SERIES + counter.next();
        }
        Matcher read = NUMBER.matcher(typed.strip().toUpperCase(Locale.ROOT));
        if (!read.matches()) {
            throw Refusal.input(
                    "number",
                    deed,
                    "An order number has up to three letters and up to six digits, such as O-042.",
                    "Type one, or leave the field empty for the next free number.");
        }
        int counted = Integer.parseInt(read.group(2));
        String number = read.group(1) + "-" + counted;
        orders.findByNumber(number).ifPresent(taken -> {
            throw Refusal.input(
                    "number", deed, number + " is taken.", "Leave the field empty for the next free number.");
        });
        if (number.startsWith(SERIES)) {
            counter.atLeast(counted);
        }
        return number;
    }

    /** A frame that came back keeps its serial; the order it left on is closed as returned. */
    private void cameBack(Act act, String deed, ShopOrder order, String typed) {
        String serial = serials.ofReturnedFrame(act, deed, typed);
        List<ShopOrder> before = orders.findBySerialOrderByIdDesc(serial);
        for (ShopOrder earlier : before) {
            if (earlier.state().open()) {
                throw Refusal.input(
                        "returnedSerial",
                        deed,
                        "The frame is still here: " + earlier.number() + " is "
                                + earlier.state().word() + ".",
                        "Enter a nonconformance on that order, or read the serial again.");
            }
            if (earlier.state() == OrderState.SHIPPED) {
                log.opens(act, "enter-order", "order:" + order.number(), Chains.order(earlier.number()));
                earlier.takeBack(act);
                opening.event(earlier, "frame-returned", Map.of("on", order.id()));
            }
        }
        order.cameBack(serial);
        opening.event(order, "frame-came-back", Map.of("serial", serial));
    }

    private static String salt() {
        byte[] salt = new byte[16];
        RANDOM.nextBytes(salt);
        return HexFormat.of().formatHex(salt);
    }
}
