package org.trammel.shop.orders;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.orders.OrdersTest.refusal;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Role;

/** An order names its colours coat by coat; in work they are other ones only with a reason. */
@ShopTest
class OrderedColoursTest {

    @Autowired
    private OrderEntry entry;

    @Autowired
    private OrderedColours colours;

    @Autowired
    private TestCrew crew;

    @Autowired
    private JdbcClient jdbc;

    private long owner;

    @BeforeEach
    void hire() {
        owner = crew.hire(Role.OWNER);
    }

    @Test
    void theNewestStandAndAllAreKept() {
        long order = entry.enter(crew.act(owner), TakenOrder.hardtail()).id();
        assertThat(colours.of(order)).isEmpty();
        colours.name(crew.act(owner), order, OrderedColours.typed(" sand \n\n green\r\nclear "), null);
        assertThat(colours.of(order)).containsExactly("sand", "green", "clear");
        var act = crew.act(owner);
        colours.name(act, order, List.of("green"), null);
        colours.name(act, order, List.of("green"), null);
        assertThat(colours.of(order)).containsExactly("green");
        assertThat(colours.history(order)).hasSize(2);
    }

    @Test
    void whatIsInWorkGetsAnotherColourWithAReasonOnly() {
        long order = entry.enter(crew.act(owner), TakenOrder.hardtail()).id();
        colours.name(crew.act(owner), order, List.of("green"), null);
        jdbc.sql("update shop_order set state = 'IN_WORK' where id = ?")
                .param(order)
                .update();
        assertThat(refusal(() -> colours.name(crew.act(owner), order, List.of("sand"), " "))
                        .field())
                .isEqualTo("coloursReason");
        assertThat(colours.of(order)).containsExactly("green");
        colours.name(crew.act(owner), order, List.of("sand"), "asked for in writing");
        assertThat(colours.history(order).get(1).reason()).isEqualTo("asked for in writing");
    }

    @Test
    void noColourAndTooManyAreRefusedAndAWorkerNamesNone() {
        long order = entry.enter(crew.act(owner), TakenOrder.hardtail()).id();
        assertThat(refusal(() -> colours.name(crew.act(owner), order, List.of(" "), null))
                        .why())
                .contains("No colour");
        assertThat(refusal(() -> colours.name(
                                crew.act(owner), order, List.of("1", "2", "3", "4", "5", "6", "7", "8", "9"), null))
                        .why())
                .contains("more than 8");
        long worker = crew.hire(Role.STATION_WORKER);
        assertThat(refusal(() -> colours.name(crew.act(worker), order, List.of("sand"), null))
                        .what())
                .contains("were not named");
    }
}
