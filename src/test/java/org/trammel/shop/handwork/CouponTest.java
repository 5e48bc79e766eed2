package org.trammel.shop.handwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.trammel.shop.floor.SmallRoute.op;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.gauges.NewGauge;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Signed;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.FrameSheet;

/** The window of conductivity is the shop's own as soon as ten coupons of known stock give one. */
class CouponTest extends AtTheBrushes {

    @Autowired
    private Coupons coupons;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Crew people;

    private static CharacteristicSheet conductivity() {
        return new CharacteristicSheet(
                "020-4",
                "Conductivity",
                "%IACS",
                1,
                false,
                null,
                new BigDecimal("30"),
                new BigDecimal("47"),
                "CONDUCTIVITY",
                List.of("end 1"),
                Reduction.SINGLE,
                Rule.PLAIN,
                List.of(Signer.WORKER),
                false,
                false,
                false,
                true,
                null,
                0,
                null,
                null,
                "shop default");
    }

    private FrameSheet.CharacteristicLine released() {
        RouteSheet drawn = SmallRoute.of(
                        op("020").characteristic(conductivity()).sheet(),
                        op("999").step("on").sheet())
                .sheet();
        Floor.Frame frame = floor.frame(new RouteSheet(
                0, "TEST", "test route", "A", "AL7005", "HARDTAIL", drawn.operations(), drawn.clocks(), List.of()));
        return floor.at(frame).characteristics().get(0);
    }

    private String meter() {
        String code = "D" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(java.util.Locale.ROOT);
        register.register(
                crew.act(qa),
                code,
                new NewGauge(
                        "meter of a test",
                        null,
                        "rack",
                        false,
                        List.of(new GaugeRange(
                                "CONDUCTIVITY",
                                "%IACS",
                                BigDecimal.ZERO,
                                new BigDecimal("60"),
                                new BigDecimal("0.1"),
                                new BigDecimal("0.4"),
                                null,
                                "from memory"))));
        register.calibrated(
                crew.act(qa), code, LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31), "C-1", null, "well");
        return code;
    }

    private void read(String meter, String label, String value) {
        coupons.read(crew.act(qa), new Coupons.Read("AL7005", label, "certificate", new BigDecimal(value), meter));
    }

    /**
     * 35.0 to 36.8 by fifths: mean 35.9 and deviation √(3.3/9) = 0.6055, by hand; the factor for ten, 95 % with 95 %
     * confidence, is 3.38 (NIST/SEMATECH e-Handbook 7.2.6.3), so they go from 33.85 to 37.95, and the window in tenths from
     * 33.9 to 37.9: rounded inward, since a limit that grew by rounding would let in what lies beyond it.
     */
    @Test
    void tenCouponsGiveAWindowToFramesReleasedAfterwardsOnly() {
        String meter = meter();
        FrameSheet.CharacteristicLine before = released();
        assertThat(before.lowerLimit()).isEqualByComparingTo("30");
        for (int i = 0; i < 9; i++) {
            read(meter, "K-" + i, BigDecimal.valueOf(350 + 2L * i, 1).toPlainString());
        }
        assertThat(coupons.window("AL7005")).isEmpty();
        assertThat(released().lowerLimit()).as("nine are too few").isEqualByComparingTo("30");
        read(meter, "K-9", "36.8");
        FrameSheet.CharacteristicLine after = released();
        assertThat(after.lowerLimit()).isEqualByComparingTo("33.9");
        assertThat(after.upperLimit()).isEqualByComparingTo("37.9");
        assertThat(before.lowerLimit()).isEqualByComparingTo("30");

        Coupon last = coupons.of("AL7005").get(9);
        coupons.takeOut(crew.act(qa), last.id(), "taken from a rack nobody vouches for");
        assertThat(coupons.of("AL7005")).hasSize(9);
        assertThat(released().lowerLimit()).isEqualByComparingTo("30");
        refused(() -> coupons.takeOut(crew.act(qa), last.id(), "again"), "taken out before");
        coupons.of("AL7005").forEach(one -> coupons.takeOut(crew.act(qa), one.id(), "end of the test"));
    }

    @Test
    void whatIsNoCouponOfKnownStockIsRefused() {
        String meter = meter();
        refused(
                () -> coupons.read(crew.act(worker), new Coupons.Read("AL6061", "X", "c", BigDecimal.TEN, meter)),
                "QA lead");
        refused(
                () -> coupons.read(crew.act(qa), new Coupons.Read("STEEL", "X", "c", BigDecimal.TEN, meter)),
                "STEEL is none of it");
        refused(
                () -> coupons.read(crew.act(qa), new Coupons.Read("AL6061", "X", " ", BigDecimal.TEN, meter)),
                "What it is known by");
        refused(
                () -> coupons.read(crew.act(qa), new Coupons.Read("AL6061", "X", "c", new BigDecimal("150"), meter)),
                "up to 100 %IACS");
        refused(
                () -> coupons.read(crew.act(qa), new Coupons.Read("AL6061", "X", "c", BigDecimal.TEN, " ")),
                "not said what it was read with");
        read(meter, "TWICE", "36");
        refused(() -> read(meter, "twice", "36.1"), "no second piece");
        coupons.takeOut(crew.act(qa), coupons.of("AL7005").get(0).id(), "end of the test");
    }

    /** A page that breaks off in the middle was sent with all its marks of success. */
    @Test
    void thePageShowsEachCouponToItsEnd() throws Exception {
        read(meter(), "SHOWN-1", "35.4");
        assertThat(mvc.perform(get("/shop/coupons").with(Signed.on(people.byId(qa))))
                        .andReturn()
                        .getResponse()
                        .getContentAsString())
                .contains("aria-label=\"Coupons of aluminium 7005\"", "SHOWN-1", "</html>");
    }
}
