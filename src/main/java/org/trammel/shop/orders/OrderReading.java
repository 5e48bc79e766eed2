package org.trammel.shop.orders;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.KeptWords;
import org.trammel.shop.records.Words;

/** Reads what the sheets of orders show, and no more of it than the reader may see. */
@Service
@Transactional(readOnly = true)
class OrderReading {

    private static final int KNOWN_CUSTOMERS = 200;

    private final ShopOrderRepository orders;
    private final CustomerRepository customers;
    private final RiderRepository riders;
    private final OrderPromiseRepository promises;
    private final OrderPriceRepository prices;
    private final OrderCostRepository costs;
    private final OwnPartRepository parts;
    private final OrderChangeRepository changes;
    private final OrderAct opening;
    private final Designs designs;
    private final Words words;
    private final Crew crew;

    OrderReading(
            ShopOrderRepository orders,
            CustomerRepository customers,
            RiderRepository riders,
            OrderPromiseRepository promises,
            OrderPriceRepository prices,
            OrderCostRepository costs,
            OwnPartRepository parts,
            OrderChangeRepository changes,
            OrderAct opening,
            Designs designs,
            Words words,
            Crew crew) {
        this.orders = orders;
        this.customers = customers;
        this.riders = riders;
        this.promises = promises;
        this.prices = prices;
        this.costs = costs;
        this.parts = parts;
        this.changes = changes;
        this.opening = opening;
        this.designs = designs;
        this.words = words;
        this.crew = crew;
    }

    /** Whether somebody may see a customer's name and contact, and what they wrote. */
    static boolean seesCustomers(Person person) {
        return person.isAny(Role.OWNER, Role.QA_LEAD);
    }

    /** Whether somebody may see prices and costs. */
    static boolean seesMoney(Person person) {
        return person.isAny(Role.OWNER, Role.QA_LEAD, Role.AUDITOR);
    }

    OrderStory story(long orderId, Person reader) {
        ShopOrder order = opening.load(orderId);
        List<OrderPromise> promised = promises.findByOrderIdOrderById(orderId);
        List<OrderPrice> priced = prices.findByOrderIdOrderById(orderId);
        List<OrderCost> spent = costs.findByOrderIdOrderById(orderId);
        List<OwnPart> own = parts.findByOrderIdOrderById(orderId);
        List<OrderChange> wishes = changes.findByOrderIdOrderById(orderId);
        boolean personal = seesCustomers(reader);
        Said said = said(order, promised, priced, spent, own, personal ? wishes : List.of());
        RiderDetails rider = reader.mayWork()
                ? riders.findById(orderId).map(Rider::details).orElse(RiderDetails.UNKNOWN)
                : RiderDetails.UNKNOWN;
        Long design = order.designId();
        return new OrderStory(
                order.sheet(),
                order.details(rider),
                order.version(),
                money(order, spent),
                personal ? customer(order.customerId()) : null,
                design == null ? List.of() : designs.revisions(design),
                promised.stream().map(said::line).toList(),
                priced.stream().map(said::line).toList(),
                spent.stream().map(said::line).toList(),
                own.stream().map(said::line).toList(),
                wishes.stream().map(said::line).toList(),
                said.name(order.orderedBy()),
                order.beganAt(),
                order.finishedAt(),
                order.cancelledWords() == null ? null : said.text(order.cancelledWords()));
    }

    private OrderStory.CustomerLine customer(long customerId) {
        return customers.findById(customerId).map(OrderReading::line).orElseThrow();
    }

    static OrderStory.CustomerLine line(Customer customer) {
        return new OrderStory.CustomerLine(
                customer.id(),
                customer.name(),
                customer.contact(),
                customer.country(),
                customer.consentOn(),
                customer.erasedAt());
    }

    private static OrderStory.Money money(ShopOrder order, List<OrderCost> spent) {
        BigDecimal hours = BigDecimal.ZERO;
        BigDecimal total = BigDecimal.ZERO;
        for (OrderCost cost : spent) {
            if (cost.amount() != null) {
                total = total.add(cost.amount());
            }
            if (cost.hours() != null && cost.hourRate() != null) {
                hours = hours.add(cost.hours());
                total = total.add(cost.hours().multiply(cost.hourRate()));
            }
        }
        return new OrderStory.Money(
                order.priceAmount(),
                order.priceCurrency(),
                Plain.number(hours),
                total.setScale(2, RoundingMode.HALF_UP));
    }

    private Said said(
            ShopOrder order,
            List<OrderPromise> promised,
            List<OrderPrice> priced,
            List<OrderCost> spent,
            List<OwnPart> own,
            List<OrderChange> wishes) {
        List<@Nullable Long> ids = new ArrayList<>();
        ids.add(order.cancelledWords());
        promised.forEach(one -> ids.add(one.reasonWords()));
        priced.forEach(one -> ids.add(one.reasonWords()));
        spent.forEach(one -> ids.add(one.reasonWords()));
        own.forEach(one -> {
            ids.add(one.measuredWords());
            ids.add(one.endedWords());
            ids.add(one.agreedWords());
        });
        wishes.forEach(one -> {
            ids.add(one.askedWords());
            ids.add(one.answerWords());
        });
        List<Long> wanted = ids.stream().filter(Objects::nonNull).toList();
        return new Said(wanted.isEmpty() ? Map.of() : words.findAll(wanted), crew.names());
    }

    /** What people wrote and who they are, for the lines of a sheet. */
    private record Said(Map<Long, KeptWords> words, Map<Long, String> names) {

        String text(@Nullable Long id) {
            KeptWords kept = id == null ? null : words.get(id);
            return kept == null ? "" : kept.shown();
        }

        String name(long person) {
            return names.getOrDefault(person, "");
        }

        OrderStory.PromiseLine line(OrderPromise one) {
            return new OrderStory.PromiseLine(
                    one.promisedOn(),
                    Plain.number(one.percentile()),
                    text(one.reasonWords()),
                    name(one.promisedBy()),
                    one.promisedAt());
        }

        OrderStory.PriceLine line(OrderPrice one) {
            return new OrderStory.PriceLine(
                    one.amount(), one.currency(), text(one.reasonWords()), name(one.pricedBy()), one.pricedAt());
        }

        OrderStory.CostLine line(OrderCost one) {
            return new OrderStory.CostLine(
                    one.kind(),
                    one.hours() == null ? null : Plain.number(one.hours()),
                    one.amount(),
                    text(one.reasonWords()),
                    name(one.enteredBy()),
                    one.enteredAt());
        }

        OrderStory.PartLine line(OwnPart one) {
            return new OrderStory.PartLine(
                    one.id(),
                    one.what(),
                    one.description(),
                    one.dueOn(),
                    one.state().name(),
                    one.state().word(),
                    one.arrivedAt(),
                    one.measuredWords() == null ? null : text(one.measuredWords()),
                    one.endedWords() == null ? null : text(one.endedWords()),
                    one.agreedWords() == null ? null : text(one.agreedWords()));
        }

        OrderStory.ChangeLine line(OrderChange one) {
            return new OrderStory.ChangeLine(
                    one.id(),
                    one.state().name(),
                    text(one.askedWords()),
                    name(one.askedBy()),
                    one.askedAt(),
                    one.answerWords() == null ? null : text(one.answerWords()));
        }
    }

    /** A closed order with the place it has in the list, so that the next page goes on after it. */
    record PastLine(OrderSheet sheet, Instant closedAt) {}

    /** Orders that are closed, the last closed first; goes on after the one named. */
    List<PastLine> past(@Nullable Instant before, long beforeId, int page) {
        List<ShopOrder> found =
                before == null ? orders.closed(Limit.of(page)) : orders.closedBefore(before, beforeId, Limit.of(page));
        return found.stream()
                .map(order -> new PastLine(order.sheet(), Objects.requireNonNull(order.closedAt())))
                .toList();
    }

    /** Customers that may be ordered for again, the last entered first, by id. */
    Map<String, String> knownCustomers() {
        Map<String, String> known = new LinkedHashMap<>();
        known.put("", "a new customer");
        customers
                .findByErasedAtIsNullOrderByIdDesc(Limit.of(KNOWN_CUSTOMERS))
                .forEach(one -> known.put(Long.toString(one.id()), one.name() + ", " + one.country()));
        return known;
    }

    /** One customer with the orders they made. */
    OrderStory.CustomerLine customerLine(long customerId) {
        return customers
                .findById(customerId)
                .map(OrderReading::line)
                .orElseThrow(() -> Customers.missing("The customer was not found.", customerId));
    }

    List<OrderSheet> ofCustomer(long customerId) {
        return orders.findByCustomerIdOrderById(customerId).stream()
                .map(ShopOrder::sheet)
                .toList();
    }
}
