package org.trammel.shop.yields;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.ShopTest;
import org.trammel.shop.Statements;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.nonconformance.Deciding;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.nonconformance.Proposal;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.Signing;

@ShopTest
class YieldsTest {

    /** A gate of no other test. */
    private static final String GATE = "471";

    private static final LocalDate LONG_AGO = LocalDate.of(2020, 1, 1);

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Yields yields;

    @Autowired
    private Deciding deciding;

    @Autowired
    private Settings settings;

    @Autowired
    private Crew crew;

    @Autowired
    private Statements statements;

    private WholeShop shop;
    private long worker;
    private long second;
    private long qa;
    private String gauge;
    private long route;

    @BeforeEach
    void open() {
        shop = new WholeShop(beans);
        worker = shop.hire(Role.STATION_WORKER);
        second = shop.hire(Role.STATION_WORKER);
        qa = shop.hire(Role.QA_LEAD);
        gauge = shop.gauge("CALLIPER", "mm", null, LocalDate.of(2027, 1, 1));
        route = shop.route(SmallRoute.of(
                        SmallRoute.op(GATE)
                                .step("weld")
                                .plain(GATE + "-1", "0.3")
                                .hold(Signer.SECOND)
                                .sheet(),
                        SmallRoute.op("472").step("pack").sheet())
                .sheet());
    }

    private WholeShop.Frame read(String value) {
        WholeShop.Frame frame = shop.frame(route);
        shop.tickAll(frame, worker);
        shop.read(worker, shop.at(frame).characteristics().get(0).characteristicId(), gauge, value);
        return frame;
    }

    private void sign(WholeShop.Frame frame) {
        beans.getBean(Signing.class)
                .sign(shop.act(second), shop.at(frame).line().operationId(), second, Signer.SECOND);
    }

    private void rework(WholeShop.Frame frame, @Nullable String hours) {
        deciding.propose(
                shop.act(qa),
                deciding.of(frame.serial()).get(0).id(),
                new Proposal(
                        Decision.REWORK,
                        "weld again",
                        GATE,
                        null,
                        null,
                        false,
                        null,
                        false,
                        hours == null ? null : new BigDecimal(hours),
                        null,
                        Set.of()),
                true);
    }

    private GateLine line() {
        return yields.since(LONG_AGO).gates().stream()
                .filter(each -> each.code().equals(GATE))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Four frames, of which one does not conform and is reworked in 1.5 h, and one in hours nobody wrote down. Expected by
     * hand; the interval of 2 of 4 by the quadratic of E. B. Wilson (1927), solved here.
     */
    @Test
    void aFrameThatDidNotConformDidNotPassThoughItWasPutRight() throws Exception {
        sign(read("0.1"));
        sign(read("0.0"));
        WholeShop.Frame again = read("0.9");
        rework(again, "1.5");
        rework(read("0.8"), null);
        shop.frame(route);
        GateLine line = line();
        assertThat(line.firstPass().count()).as("one has not come to its point").isEqualTo(4);
        assertThat(line.firstPass().hits()).isEqualTo(2);
        double z2 = 1.959964 * 1.959964;
        double middle = (0.5 + z2 / 8) / (1 + z2 / 4);
        double half = Math.sqrt(middle * middle - 0.25 / (1 + z2 / 4));
        assertThat(line.firstPass().interval().low()).isCloseTo(middle - half, within(1e-6));
        assertThat(line.firstPass().interval().high()).isCloseTo(middle + half, within(1e-6));
        assertThat(line.hoursKnown()).isEqualTo(1);
        assertThat(line.hours()).isEqualTo(1.5);
        assertThat(line.reworkHours()).isCloseTo(0.75, within(1e-12));
        assertThat(line.cost()).isCloseTo(0.75 * settings.number("cost.hour").doubleValue(), within(1e-9));
        sign(done(again));
        assertThat(line().firstPass().hits())
                .as("a loop mends no first attempt")
                .isEqualTo(2);
        YieldSheet sheet = yields.since(LONG_AGO);
        double product = sheet.gates().stream()
                .mapToDouble(each ->
                        (double) each.firstPass().hits() / each.firstPass().count())
                .reduce(1, (a, b) -> a * b);
        assertThat(sheet.rolled()).isCloseTo(product, within(1e-12));
        String page = mvc.perform(get("/qa/yield?since=2020-01-01").with(Signed.on(crew.byId(qa))))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(page).contains(GATE, "1,5 (of 1)", "<svg class=\"errors\"", "15 and 85");
        mvc.perform(get("/api/v1/yield").with(Signed.on(crew.byId(qa))))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.gates.length()").isNumber());
        mvc.perform(get("/qa/yield?since=2099-01-01").with(Signed.on(crew.byId(qa))))
                .andExpect(status().is4xxClientError());
    }

    /** The reworked frame once more to its point. */
    private WholeShop.Frame done(WholeShop.Frame frame) {
        shop.tickAll(frame, worker);
        shop.read(worker, shop.at(frame).characteristics().get(0).characteristicId(), gauge, "0.1");
        return frame;
    }

    @Test
    void itTakesThreeStatementsHoweverManyFrames() throws Exception {
        read("0.1");
        read("0.2");
        List<GateLine> gates = yields.since(LONG_AGO).gates();
        assertThat(gates).isNotNull();
        assertThat(statements.during(() -> yields.since(LONG_AGO))).hasSize(3);
    }
}
