package org.trammel.shop.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.designs.Nominal;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.gauges.GaugeRegister;
import org.trammel.shop.gauges.NewGauge;
import org.trammel.shop.people.Asking;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Signed;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.Signer;

/**
 * What a release says of gauges. The share of half the tolerance that U may have is 1/4, common practice and the shop's
 * own setting: for ±0.30 that is U = 0.075 or u = 0.0375.
 */
class GaugesForReleaseTest extends AtTheTable {

    @Autowired
    private GaugesForRelease warnings;

    @Autowired
    private Designs designs;

    @Autowired
    private GaugeRegister register;

    @Autowired
    private Crew crew;

    @Autowired
    private MockMvc mvc;

    private String kind;
    private long drawing;
    private WholeShop.Frame frame;

    /** A gauge kind that nobody else's test has a gauge of. */
    @BeforeEach
    void kindOfItsOwn() {
        kind = "K" + UUID.randomUUID().toString().substring(0, 8).toUpperCase();
        jdbc.sql("insert into gauge_kind (code, name) values (?, ?)")
                .params(kind, "Probe " + kind)
                .update();
        long route = shop.route(SmallRoute.of(SmallRoute.op("080")
                        .characteristic(wantedOf("080-1", Rule.GUARDED))
                        .characteristic(wantedOf("080-2", Rule.PLAIN))
                        .sheet())
                .sheet());
        Map<String, Nominal> nominals =
                Map.of("080-1", Nominal.of(new BigDecimal("622.5")), "080-2", Nominal.of(new BigDecimal("150")));
        frame = shop.frame(route, nominals);
        drawing = shop.drawing(frame.designId(), 2, nominals);
        jdbc.sql("update design_revision set route_revision_id = ? where id = ?")
                .params(route, drawing)
                .update();
    }

    @Test
    void aKindNobodyHasIsNamedWithWhatWantsIt() {
        assertThat(said())
                .containsExactly(
                        "No probe " + kind.toLowerCase() + " that reads mm is in use and in date: 080-1, 080-2.");
    }

    @Test
    void aGaugePastItsDateIsNone() {
        gauge("0.01", "2000", LocalDate.of(2026, 1, 31));
        assertThat(said()).singleElement().asString().contains("is in use and in date: 080-1, 080-2");
        gauge("0.01", "2000", NEXT_YEAR);
        assertThat(said()).isEmpty();
    }

    @Test
    void aGaugeThatDoesNotReachTheNominalIsNone() {
        gauge("0.01", "300", NEXT_YEAR);
        assertThat(said()).containsExactly("No probe " + kind.toLowerCase() + " in date reaches 622,5 mm: 080-1.");
        gauge("0.01", "622.5", NEXT_YEAR);
        assertThat(said()).isEmpty();
    }

    @Test
    void theFinestThatReachesItIsCoarseAboveAQuarterOfHalfTheTolerance() {
        String coarse = gauge("0.038", "2000", NEXT_YEAR);
        assertThat(said())
                .containsExactly(
                        "080-1, face of 080-1: " + coarse
                                + " is coarse for this: U is 0,076 mm for half a tolerance of 0,3.",
                        "080-2, face of 080-2: " + coarse
                                + " is coarse for this: U is 0,076 mm for half a tolerance of 0,3.");
        gauge("0.0375", "2000", NEXT_YEAR);
        assertThat(said()).isEmpty();
    }

    @Test
    void anAidServesThePlainRuleOnly() {
        gauge(null, "2000", NEXT_YEAR);
        assertThat(said())
                .containsExactly("No probe " + kind.toLowerCase()
                        + " in date has the uncertainty that the guarded rule asks for: 080-1.");
    }

    @Test
    void pageAndApiSayItBeforeTheReleaseAndItMayBeReleasedAllTheSame() throws Exception {
        Asking lead = new Asking(mvc, Signed.on(crew.byId(qa)));
        assertThat(lead.page("/orders/" + frame.orderId() + "/newer-revision?designRevisionId=" + drawing))
                .contains(
                        "Before it is released", "is in use and in date: 080-1, 080-2.", "Release the newer revision");
        mvc.perform(get("/api/v1/orders/" + frame.orderId() + "/release-warnings?designRevisionId=" + drawing)
                        .with(lead.who()))
                .andExpect(jsonPath("$.length()").value(1))
                .andExpect(jsonPath("$[0]").value(said().get(0)));
        assertThat(lead.page("/orders/" + frame.orderId()))
                .contains("Before it is released", "is in use and in date: 080-1, 080-2.", "Release revision");
        gauge("0.01", "2000", NEXT_YEAR);
        assertThat(lead.page("/orders/" + frame.orderId()))
                .contains("Release revision")
                .doesNotContain("Before it is released");
    }

    private List<String> said() {
        return warnings.of(designs.revision(drawing));
    }

    private String gauge(@Nullable String u, String highest, LocalDate due) {
        String code = "G" + UUID.randomUUID().toString().substring(0, 8).toUpperCase();
        GaugeRange range = new GaugeRange(
                kind,
                "mm",
                BigDecimal.ZERO,
                new BigDecimal(highest),
                u == null ? null : new BigDecimal("0.001"),
                u == null ? null : new BigDecimal(u),
                null,
                "certificate");
        register.register(shop.act(qa), code, new NewGauge("probe", null, "", u == null, List.of(range)));
        register.calibrated(shop.act(qa), code, LocalDate.of(2026, 1, 1), due, "C-1", null, "");
        return code;
    }

    private CharacteristicSheet wantedOf(String code, Rule rule) {
        return new CharacteristicSheet(
                code,
                "face of " + code,
                "mm",
                2,
                true,
                null,
                new BigDecimal("-0.30"),
                new BigDecimal("0.30"),
                kind,
                List.of("once"),
                Reduction.SINGLE,
                rule,
                List.of(Signer.WORKER),
                false,
                false,
                false,
                true,
                null,
                0,
                null,
                null,
                "test");
    }
}
