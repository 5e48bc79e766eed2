package org.trammel.shop.orders;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

class OrderStatesTest {

    private static final Act ACT = new Act(UUID.randomUUID(), 1, null, Instant.parse("2026-03-18T07:30:00Z"), null);
    private static final OrderDetails DETAILS = new OrderDetails(
            "Hardtail",
            "AL6061",
            "HARDTAIL",
            Category.MOUNTAIN,
            "SE",
            "",
            BrakeLever.LEFT,
            RiderDetails.UNKNOWN,
            List.of());

    @ParameterizedTest(name = "{0}: {1} → {2}")
    @CsvFileSource(resources = "/states/order.csv", numLinesToSkip = 1)
    void goesWhereTheTableSaysOrRefusesNamingItsState(OrderState state, String verb, String after) {
        ShopOrder order = in(state);
        if (after.equals("refused")) {
            assertThatThrownBy(() -> carryOut(order, verb))
                    .isInstanceOfSatisfying(
                            Refusal.class, refused -> assertThat(refused.why()).contains(state.word()));
            assertThat(order.state()).isEqualTo(state);
        } else {
            carryOut(order, verb);
            assertThat(order.state()).isEqualTo(OrderState.valueOf(after));
        }
    }

    private static ShopOrder in(OrderState state) {
        ShopOrder order = new ShopOrder("O-1", 1, DETAILS, "EUR", ACT);
        if (state == OrderState.CANCELLED) {
            order.cancel(ACT, 5);
            return order;
        }
        if (state == OrderState.ORDERED) {
            return order;
        }
        order.design(1);
        if (state == OrderState.DESIGNING) {
            return order;
        }
        order.drawingApproved(1);
        if (state == OrderState.APPROVED) {
            return order;
        }
        order.serial("AV26101H");
        order.begin(ACT, 1, "HT-6061");
        if (state == OrderState.IN_WORK) {
            return order;
        }
        order.finish(ACT);
        if (state == OrderState.READY_TO_SHIP) {
            return order;
        }
        order.ship(ACT);
        if (state == OrderState.SHIPPED) {
            return order;
        }
        order.takeBack(ACT);
        return order;
    }

    private static void carryOut(ShopOrder order, String verb) {
        switch (verb) {
            case "change" -> order.change(DETAILS);
            case "design" -> order.design(2);
            case "promise" -> order.promise(LocalDate.of(2026, 5, 1), BigDecimal.valueOf(85));
            case "price" -> order.price(BigDecimal.valueOf(2500), "EUR");
            case "begin" -> order.begin(ACT, 1, "HT-6061");
            case "finish" -> order.finish(ACT);
            case "reopen" -> order.reopen();
            case "ship" -> order.ship(ACT);
            case "take-back" -> order.takeBack(ACT);
            case "cancel" -> order.cancel(ACT, 5);
            case "reserve-serial", "assign-serial", "ask-change", "answer-change" ->
                OrderVerb.valueOf(verb.toUpperCase().replace('-', '_')).refuseUnless(order.number(), order.state());
            default -> throw new IllegalArgumentException(verb);
        }
    }
}
