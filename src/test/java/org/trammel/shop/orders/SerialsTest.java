package org.trammel.shop.orders;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.orders.OrdersTest.refusal;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

@ShopTest
class SerialsTest {

    @Autowired
    private TestCrew crew;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private OrderEntry entry;

    @Autowired
    private Orders orders;

    @Autowired
    private Serials serials;

    @Value("${trammel.home}")
    private String home;

    private long owner;

    @BeforeEach
    void hire() {
        owner = crew.hire(Role.OWNER);
    }

    @Test
    void serialsCountOnAndAnOrderKeepsTheOneItHas() {
        long first = order();
        long second = order();
        int one = number(orders.reserveSerial(act(), first));
        int two = number(orders.reserveSerial(act(), second));
        assertThat(two).isEqualTo(one + 1);
        assertThat(number(orders.reserveSerial(act(), first))).isEqualTo(one);
    }

    /** The day before the last serials were given comes back; the mark outside the database knows better. */
    @Test
    void aSerialIsNotGivenAgainAfterAnOlderBackUpWasRestored() throws Exception {
        int given = number(orders.reserveSerial(act(), order()));
        int later = number(orders.reserveSerial(act(), order()));
        assertThat(later).isEqualTo(given + 1);
        jdbc.sql("update serial_series set last_number = ?").param(given).update();
        assertThat(number(orders.reserveSerial(act(), order()))).isEqualTo(later + 1);
        assertThat(jdbc.sql("select count(*) from log_entry where payload like '%serial-mark-ahead%'")
                        .query(Long.class)
                        .single())
                .isPositive();
        UUID installation = jdbc.sql("select installation from order_series")
                .query(UUID.class)
                .single();
        Properties mark = new Properties();
        try (var reader = Files.newBufferedReader(Path.of(home, "serial-mark-" + installation + ".properties"))) {
            mark.load(reader);
        }
        assertThat(mark.values()).contains(Integer.toString(later + 1));
    }

    @Test
    void theMarkIsRaisedAndNeverLowered() {
        int last = number(orders.reserveSerial(act(), order()));
        serials.raise(act(), last + 5);
        assertThat(number(orders.reserveSerial(act(), order()))).isEqualTo(last + 6);
        Refusal lower = refusal(() -> serials.raise(act(), last + 6));
        assertThat(lower.field()).isEqualTo("number");
        assertThat(lower.instead()).contains("never given twice");
        assertThat(refusal(() -> serials.raise(act(), 1000)).field()).isEqualTo("number");
    }

    @ParameterizedTest
    @ValueSource(strings = {"AV24-037-V", "av24037v", " AV24 037 V ", "AV24-O37-V"})
    void aFrameThatComesBackKeepsItsOldSerialHoweverItIsTyped(String typed) {
        OrderSheet order = entry.enter(act(), TakenOrder.returned(typed));
        assertThat(order.serial()).isEqualTo("AV24037V");
        assertThat(order.returnedFrame()).isTrue();
        jdbc.sql("update shop_order set serial = null where id = ?")
                .param(order.id())
                .update();
    }

    @ParameterizedTest
    @ValueSource(strings = {"AV24-037-W", "AV24-073-V", "VA24-037-V", "037-V", "AV24-037-V-FT", "no serial", "AV24"})
    void aSerialThatWasMisreadIsRefused(String typed) {
        assertThat(refusal(() -> entry.enter(act(), TakenOrder.returned(typed))).field())
                .isEqualTo("returnedSerial");
    }

    @Test
    void aFrameCannotComeBackBeforeItLeft() {
        long order = order();
        String serial = orders.reserveSerial(act(), order);
        assertThat(refusal(() -> entry.enter(act(), TakenOrder.returned(serial)))
                        .why())
                .contains("still here");
        jdbc.sql("update shop_order set state = 'SHIPPED' where id = ?")
                .param(order)
                .update();
        OrderSheet repair = entry.enter(act(), TakenOrder.returned(serial));
        assertThat(repair.serial()).isEqualTo(serial);
        assertThat(orders.byId(order).state()).isEqualTo(OrderState.RETURNED);
        assertThat(orders.bySerial(serial)).extracting(OrderSheet::id).containsExactly(repair.id(), order);
    }

    @Test
    void aSerialThisYearHasNotReachedIsNoReturnedFrame() {
        String mine = orders.reserveSerial(act(), order());
        String ahead = SerialNumber.of(mine.substring(0, 2), 26, 998).stored();
        assertThat(refusal(() -> entry.enter(act(), TakenOrder.returned(ahead))).why())
                .contains("not given yet");
    }

    private long order() {
        return entry.enter(act(), TakenOrder.hardtail()).id();
    }

    private Act act() {
        return crew.act(owner);
    }

    private static int number(String serial) {
        return SerialNumber.read(serial) instanceof SerialNumber.Result.Whole whole
                ? whole.serial().number()
                : -1;
    }
}
