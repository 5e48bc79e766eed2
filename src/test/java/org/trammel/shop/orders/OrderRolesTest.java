package org.trammel.shop.orders;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

@ShopTest
class OrderRolesTest {

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private TestCrew crew;

    @Autowired
    private OrderEntry entry;

    @Autowired
    private OrderBook book;

    @Autowired
    private Orders orders;

    @Autowired
    private ChangeRequests changes;

    @Autowired
    private OwnParts parts;

    @Autowired
    private Customers customers;

    @Autowired
    private Serials serials;

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/states/order-roles.csv", numLinesToSkip = 1)
    void onlyThoseOfTheTableMay(ArgumentsAccessor row) {
        String verb = row.getString(0);
        long order = ready(verb);
        for (int i = 0; i < Role.values().length; i++) {
            Role role = Role.values()[i];
            Act act = crew.act(crew.hire(role));
            if (row.getString(i + 1).equals("refused")) {
                Refusal refused = catchThrowableOfType(Refusal.class, () -> carryOut(verb, order, act));
                assertThat(refused).as(verb + " by " + role).isNotNull();
                assertThat(refused.kind()).as(verb + " by " + role).isEqualTo(Refusal.Kind.PERSON);
            } else {
                carryOut(verb, ready(verb), act);
            }
        }
    }

    private long ready(String verb) {
        long owner = crew.hire(Role.OWNER);
        long order = entry.enter(crew.act(owner), TakenOrder.hardtail()).id();
        switch (verb) {
            case "answer-change" -> changes.ask(crew.act(owner), order, "another colour");
            case "take-back" ->
                jdbc.sql("update shop_order set state = 'SHIPPED' where id = ?")
                        .param(order)
                        .update();
            case "give-back-own-part" -> parts.arrive(crew.act(owner), order, part(order), "210 mm, 55 mm");
            case "erase-customer" -> book.cancel(crew.act(owner), order, "customer withdrew", true);
            default -> {
                // as entered
            }
        }
        return order;
    }

    private void carryOut(String verb, long order, Act act) {
        switch (verb) {
            case "enter" -> entry.enter(act, TakenOrder.hardtail());
            case "change" -> book.change(act, order, null, TakenOrder.details(TakenOrder.rider("180")), false);
            case "design" -> book.beginDesign(act, order);
            case "promise" -> book.promise(act, order, LocalDate.of(2026, 6, 1), null, "longer queue", false);
            case "price" -> book.price(act, order, new BigDecimal("2900"), "dearer tubes", false);
            case "reserve-serial" -> orders.reserveSerial(act, order);
            case "ask-change" -> changes.ask(act, order, "another colour");
            case "answer-change" -> changes.answer(act, order, change(order), true, "agreed by telephone");
            case "cancel" -> book.cancel(act, order, "customer withdrew", true);
            case "take-back" -> book.takeBack(act, order);
            case "enter-cost" ->
                book.enterCost(act, order, CostKind.OUTSIDE, null, new BigDecimal("80"), "stress relief", false);
            case "expect-own-part" -> parts.expect(act, order, new OwnPartDetails("fork", "541 mm", null));
            case "book-own-part" -> parts.arrive(act, order, part(order), "210 mm, 55 mm");
            case "replace-own-part" -> parts.replace(act, order, part(order), "by telephone on the 12th: one of ours");
            case "give-back-own-part" -> parts.giveBack(act, order, part(order), "did not fit");
            case "erase-customer" -> customers.erase(act, customer(order));
            case "correct-customer" -> customers.correct(act, customer(order), TakenOrder.customer());
            case "raise-serials" -> serials.raise(act, highest() + 1);
            default -> throw new IllegalArgumentException(verb);
        }
    }

    private long part(long order) {
        return number("select min(id) from own_part where order_id = ?", order);
    }

    private long change(long order) {
        return number("select min(id) from order_change where order_id = ?", order);
    }

    private long customer(long order) {
        return number("select customer_id from shop_order where id = ?", order);
    }

    private int highest() {
        return jdbc.sql("select coalesce(max(last_number), 0) from serial_series")
                .query(Integer.class)
                .single();
    }

    private long number(String sql, long order) {
        return jdbc.sql(sql).param(order).query(Long.class).single();
    }
}
