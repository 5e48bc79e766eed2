package org.trammel.shop.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.ShopTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.FrameSheet;

/** Two workers, a QA lead and frames with one operation to be measured. */
@ShopTest
abstract class AtTheTable {

    static final LocalDate NEXT_YEAR = LocalDate.of(2027, 1, 1);

    @Autowired
    ApplicationContext beans;

    @Autowired
    Readings readings;

    @Autowired
    JdbcClient jdbc;

    WholeShop shop;
    long worker;
    long second;
    long qa;

    @BeforeEach
    void open() {
        shop = new WholeShop(beans);
        worker = shop.hire(Role.STATION_WORKER);
        second = shop.hire(Role.STATION_WORKER);
        qa = shop.hire(Role.QA_LEAD);
    }

    /** A frame that stands at operation 080 with this to be read; 200 follows. */
    WholeShop.Frame frame(CharacteristicSheet... wanted) {
        SmallRoute.Op at = SmallRoute.op("080");
        Arrays.stream(wanted).forEach(at::characteristic);
        return shop.frame(
                SmallRoute.of(at.sheet(), SmallRoute.op("200").step("pack").sheet())
                        .sheet());
    }

    /** A deciding characteristic of 0 ± 0.30 with these sample points. */
    static CharacteristicSheet wanted(Rule rule, Reduction reduction, String... points) {
        return wanted("080-1", rule, reduction, false, points);
    }

    static CharacteristicSheet wanted(String code, Rule rule, Reduction reduction, boolean pair, String... points) {
        return new CharacteristicSheet(
                code,
                "twist of " + code,
                "°",
                2,
                false,
                BigDecimal.ZERO,
                new BigDecimal("-0.30"),
                new BigDecimal("0.30"),
                "TWIST",
                List.of(points),
                reduction,
                rule,
                List.of(Signer.WORKER),
                false,
                pair,
                pair,
                true,
                null,
                0,
                null,
                null,
                "test");
    }

    String gauge(@Nullable String u) {
        return shop.gauge("TWIST", "°", u, NEXT_YEAR);
    }

    ReadingLine read(long by, WholeShop.Frame frame, String gauge, String... values) {
        return readings.read(shop.act(by), characteristic(frame), input(gauge, false, values));
    }

    ReadingLine correct(long by, ReadingLine old, String gauge, String... values) {
        return readings.correct(shop.act(by), old.readingId(), input(gauge, true, values), "mistyped");
    }

    static Readings.Input input(String gauge, boolean confirmed, String... values) {
        return new Readings.Input(Arrays.stream(values).map(BigDecimal::new).toList(), gauge, null, confirmed);
    }

    long characteristic(WholeShop.Frame frame) {
        return shop.at(frame).characteristics().get(0).characteristicId();
    }

    CharacteristicState state(WholeShop.Frame frame) {
        return shop.at(frame).characteristics().get(0).state();
    }

    /** Code of the operation at hand. */
    String standsAt(WholeShop.Frame frame) {
        FrameSheet.OperationSheetOfFrame at = shop.at(frame);
        return at.line().code();
    }

    long readingsOf(WholeShop.Frame frame) {
        return jdbc.sql("select count(*) from reading where traveller_id = ?")
                .param(frame.travellerId())
                .query(Long.class)
                .single();
    }

    /** A refusal with all of its three parts. */
    static Refusal refusal(ThrowingCallable deed) {
        Refusal refused = catchThrowableOfType(Refusal.class, deed);
        assertThat(refused).isNotNull();
        assertThat(refused.what()).isNotBlank();
        assertThat(refused.why()).isNotBlank();
        assertThat(refused.instead()).isNotBlank();
        return refused;
    }

    /** A twist of 0,30° to either side that may be set twice, by 1.0° in all. */
    static CharacteristicSheet settable(String code) {
        return new CharacteristicSheet(
                code,
                "twist of " + code,
                "°",
                2,
                false,
                BigDecimal.ZERO,
                new BigDecimal("-0.30"),
                new BigDecimal("0.30"),
                "TWIST",
                List.of("once"),
                Reduction.SINGLE,
                Rule.GUARDED,
                List.of(Signer.WORKER),
                true,
                false,
                false,
                true,
                "SET",
                2,
                null,
                new BigDecimal("1.0"),
                "test");
    }
}
