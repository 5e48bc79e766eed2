package org.trammel.shop.orders;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.orders.OrdersTest.refusal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.designs.DrawnFrame;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;

@ShopTest
class ErasureTest {

    @Autowired
    private DrawnFrame.DesignDesk desk;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private TestCrew crew;

    @Autowired
    private Designs designs;

    @Autowired
    private OrderEntry entry;

    @Autowired
    private OrderBook book;

    @Autowired
    private Orders orders;

    @Autowired
    private ChangeRequests changes;

    @Autowired
    private Customers customers;

    private long owner;

    @BeforeEach
    void hire() {
        owner = crew.hire(Role.OWNER);
    }

    @Test
    void erasingACustomerLeavesOrdersAndChainsValid() throws Exception {
        OrderSheet order = shipped();
        long customer = customerOf(order);
        List<String> before = chain(order.number());
        customers.erase(act(), customer);

        assertThat(jdbc.sql("select count(*) from customer where id = ? and name is null and contact is null"
                                + " and consent_on is null and salt is null and erased_at is not null")
                        .param(customer)
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
        assertThat(jdbc.sql("select count(*) from rider where order_id = ?")
                        .param(order.id())
                        .query(Long.class)
                        .single())
                .isZero();
        assertThat(jdbc.sql(
                                "select count(*) from kept_words_text where words like '%Rider One%' and words_id in"
                                        + " (select approver_words from design_revision r join design d on d.id = r.design_id"
                                        + " where d.drawn_for = ? union select asked_words from order_change where order_id = ?)")
                        .params(order.number(), order.id())
                        .query(Long.class)
                        .single())
                .isZero();
        assertThat(orders.byId(order.id()).state()).isEqualTo(OrderState.SHIPPED);
        assertThat(orders.byId(order.id()).serial()).isEqualTo(order.serial());

        List<String> after = chain(order.number());
        assertThat(after).startsWith(before.toArray(String[]::new)).hasSize(before.size() + 1);
        sealsHold("order:" + order.number());
        sealsHold("shop");
    }

    @Test
    void theLogNeverHeldWhatTheCustomerTold() {
        OrderSheet order = shipped();
        assertThat(String.join("\n", chain(order.number())))
                .doesNotContain("Rider One", "Harbour road", "example.org", "stiff hips", "1780", "blue for me");
    }

    @Test
    void aCustomerWithAnOpenOrderIsNotErased() {
        OrderSheet order = entry.enter(act(), TakenOrder.hardtail());
        assertThat(refusal(() -> customers.erase(act(), customerOf(order))).why())
                .contains("until it is shipped");
    }

    @Test
    void anErasedCustomerIsNotOrderedForAgain() {
        OrderSheet order = entry.enter(act(), TakenOrder.hardtail());
        book.cancel(act(), order.id(), "customer withdrew", true);
        long customer = customerOf(order);
        customers.erase(act(), customer);
        NewOrder usual = TakenOrder.hardtail();
        assertThat(refusal(() -> entry.enter(
                                act(),
                                new NewOrder(
                                        null,
                                        customer,
                                        null,
                                        usual.details(),
                                        List.of(),
                                        null,
                                        null,
                                        null,
                                        null,
                                        false)))
                        .field())
                .isEqualTo("customerId");
        assertThat(refusal(() -> customers.erase(act(), customer)).why()).contains("erased before");
    }

    private OrderSheet shipped() {
        DrawnFrame frame = new DrawnFrame(desk);
        OrderSheet order = entry.enter(act(), TakenOrder.hardtail());
        long a = book.beginDesign(act(), order.id()).revisionId();
        frame.approved(frame.sent(frame.drawn(a)));
        changes.ask(act(), order.id(), "Rider One wants blue for me");
        orders.assignSerial(act(), order.id());
        orders.began(act(), order.id(), a, "HT-6061");
        orders.finished(act(), order.id());
        return orders.shipped(act(), order.id());
    }

    private long customerOf(OrderSheet order) {
        return jdbc.sql("select customer_id from shop_order where id = ?")
                .param(order.id())
                .query(Long.class)
                .single();
    }

    private List<String> chain(String number) {
        return jdbc.sql("select payload from log_entry where chain = ? order by position")
                .param("order:" + number)
                .query(String.class)
                .list();
    }

    /** Recomputes every seal by itself: SHA-256 over chain, position, seal before and payload. */
    private void sealsHold(String chain) throws Exception {
        String previous = "0".repeat(64);
        for (Map<String, Object> entry : jdbc.sql("select position, previous_hash, payload, hash from log_entry where"
                        + " chain = ? order by position")
                .param(chain)
                .query()
                .listOfRows()) {
            assertThat(entry.get("previous_hash")).isEqualTo(previous);
            String sealed = chain + '\n' + entry.get("position") + '\n' + previous + '\n' + entry.get("payload");
            previous = HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(sealed.getBytes(StandardCharsets.UTF_8)));
            assertThat(entry.get("hash")).isEqualTo(previous);
        }
    }

    private Act act() {
        return crew.act(owner);
    }
}
