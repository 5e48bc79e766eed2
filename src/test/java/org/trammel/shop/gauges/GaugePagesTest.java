package org.trammel.shop.gauges;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpSession;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;
import org.trammel.shop.ShopTest;
import org.trammel.shop.Statements;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Asking;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;

@ShopTest
class GaugePagesTest {

    private static final AtomicInteger NUMBER = new AtomicInteger();

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Gauges gauges;

    @Autowired
    private GaugeRegister register;

    @Autowired
    private TestCrew hands;

    @Autowired
    private Crew crew;

    @Autowired
    private Statements statements;

    private long qa;
    private Asking asQa;

    private static final Pattern LATER = Pattern.compile("href=\"([^\"]+)\">Later ones<");

    @BeforeEach
    void hire() {
        qa = hands.hire(Role.QA_LEAD);
        asQa = new Asking(mvc, Signed.on(crew.byId(qa)));
    }

    @Test
    void aGaugeIsRegisteredCalibratedAndRefusedByItsForms() throws Exception {
        String code = next();
        mvc.perform(asQa.form("/shop/gauges")
                        .param("code", code)
                        .param("what", "height gauge")
                        .param("kind1", "HEIGHT")
                        .param("unit1", "mm")
                        .param("lowest1", "0")
                        .param("highest1", "600")
                        .param("resolution1", "0,01")
                        .param("u1", "0,012")
                        .param("uSource1", "certificate"))
                .andExpect(redirectedUrl("/shop/gauges/" + code));
        assertThat(gauges.byCode(code).orElseThrow().ranges().get(0).u()).isEqualByComparingTo("0.012");
        mvc.perform(asQa.form("/shop/gauges/" + code + "/calibration")
                        .param("calibratedOn", "2026-03-10")
                        .param("dueOn", "2027-03-10")
                        .param("certificate", "C-771"))
                .andExpect(redirectedUrl("/shop/gauges/" + code));
        assertThat(asQa.page("/shop/gauges/" + code))
                .contains("C-771", "10 Mar 2027", "Block it")
                .doesNotContain("never calibrated");
        MvcResult refused = mvc.perform(asQa.form("/shop/gauges/" + code + "/calibration")
                        .header("Referer", "http://localhost/shop/gauges/" + code)
                        .param("calibratedOn", "10/3")
                        .param("dueOn", "2027-03-10")
                        .param("certificate", "C-772"))
                .andExpect(status().isSeeOther())
                .andReturn();
        MockHttpSession session = (MockHttpSession) refused.getRequest().getSession();
        mvc.perform(get("/shop/gauges/" + code).with(asQa.who()).session(session))
                .andExpect(content().string(containsString("There is no such day.")))
                .andExpect(content().string(containsString("value=\"C-772\"")));
        MvcResult unread = mvc.perform(asQa.form("/shop/gauges/" + code + "/failure")
                        .header("Referer", "http://localhost/shop/gauges/" + code)
                        .param("foundOn", "2026-03-17")
                        .param("error", "1.234,5")
                        .param("unit", "mm")
                        .param("note", "reads high"))
                .andExpect(status().isSeeOther())
                .andReturn();
        mvc.perform(get("/shop/gauges/" + code).with(asQa.who()).session((MockHttpSession)
                        unread.getRequest().getSession()))
                .andExpect(content().string(containsString("The failure of " + code + " was not recorded.")))
                .andExpect(content().string(containsString("value=\"1.234,5\"")));
        mvc.perform(asQa.form("/shop/gauges/" + code + "/block").param("reason", "dropped"))
                .andExpect(redirectedUrl("/shop/gauges/" + code));
        assertThat(asQa.page("/shop/gauges/" + code))
                .contains("dropped", "Unblock it")
                .doesNotContain("Block it</button>");
    }

    @Test
    void whatIsTypedIsNeverMarkup() throws Exception {
        String code = calibrated("<b onclick=alert(1)>=1+1</b>", "2099-01-01");
        register.block(hands.act(qa), code, "<script>alert(1)</script>".repeat(160));
        for (String html : List.of(
                asQa.page("/shop/gauges/" + code),
                everyPage("/shop/gauges?retired=true"),
                asQa.page("/shop/gauges/" + code + "/edit"))) {
            assertThat(html).doesNotContain("<b onclick", "<script>alert").contains("&lt;b onclick=alert(1)&gt;");
        }
    }

    @Test
    void theRegisterIsSortedByWhatFallsDueFirstAndGoesOnWhereAPageEnded() throws Exception {
        String late = calibrated("late", "2031-02-02");
        String early = calibrated("early", "2031-02-01");
        String never = register.register(hands.act(qa), next(), entry("never")).code();
        String list = everyPage("/shop/gauges");
        assertThat(list.indexOf("/" + never + "\"")).isPositive().isLessThan(list.indexOf("/" + early + "\""));
        assertThat(list.indexOf("/" + early + "\"")).isLessThan(list.indexOf("/" + late + "\""));
        assertThat(gauges.page(gauges.byCode(early).orElseThrow(), false, 1))
                .extracting(Gauge::code)
                .containsExactly(late);
        assertThat(after(gauges.byCode(never).orElseThrow()))
                .contains(early, late)
                .doesNotContain(never);
    }

    /** Codes of all that follow, page by page: other tests leave more gauges in the shop than a page holds. */
    private List<String> after(Gauge gauge) {
        List<String> codes = new ArrayList<>();
        List<Gauge> page = gauges.page(gauge, false, 200);
        while (!page.isEmpty()) {
            page.forEach(one -> codes.add(one.code()));
            page = gauges.page(page.get(page.size() - 1), false, 200);
        }
        return codes;
    }

    @Test
    void aListCostsTwoStatementsHoweverLongItIs() throws Exception {
        calibrated("one", "2030-01-01");
        calibrated("two", "2030-01-01");
        assertThat(statements.during(() -> asQa.page("/shop/gauges"))).hasSizeLessThanOrEqualTo(2);
        String code = calibrated("three", "2030-01-01");
        assertThat(statements.during(() -> asQa.page("/shop/gauges/" + code))).hasSizeLessThanOrEqualTo(6);
    }

    @Test
    void theApiDoesWhatTheFormsDoWithTheSameRefusals() throws Exception {
        String code = next();
        String body = """
                {"code": "%s", "what": "torque tool", "aid": false, "ranges": [
                  {"kind": "TORQUE", "unit": "N·m", "lowest": 2, "highest": 10, "resolution": 0.1, "uPercent": 3.5,
                   "uSource": "certificate"}]}""".formatted(code);
        mvc.perform(asQa.api("/api/v1/gauges", body))
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.state").value("IN_USE"));
        mvc.perform(asQa.api("/api/v1/gauges", body))
                .andExpect(status().is(422))
                .andExpect(header().string("Content-Type", "application/problem+json"))
                .andExpect(jsonPath("$.field").value("code"))
                .andExpect(jsonPath("$.instead").isNotEmpty());
        mvc.perform(asQa.api("/api/v1/gauges/" + code + "/calibrations", """
                        {"calibratedOn": "2026-03-01", "dueOn": "2027-03-01", "certificate": "C-9"}"""))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.dueOn").value("2027-03-01"));
        mvc.perform(asQa.api("/api/v1/gauges/" + code + "/unblock", "{\"reason\": \"why\"}"))
                .andExpect(status().isConflict());
        mvc.perform(get("/api/v1/gauges/usable")
                        .with(asQa.who())
                        .param("kind", "TORQUE")
                        .param("unit", "N·m"))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$[?(@.code == '" + code + "')].u").value(0.35));
        mvc.perform(get("/api/v1/gauges/XX-404").with(asQa.who())).andExpect(status().isNotFound());
    }

    @Test
    void aWorkerIsOfferedOnlyWhatAWorkerMayDo() throws Exception {
        String code = calibrated("for all", "2030-01-01");
        long worker = hands.hire(Role.STATION_WORKER);
        String sheet = mvc.perform(get("/shop/gauges/" + code).with(Signed.on(crew.byId(worker))))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(sheet).contains("Block it").doesNotContain("Record the calibration", "Retire", "Unblock");
    }

    @Test
    void theFileNeverStartsAFormula() throws Exception {
        String code = calibrated("=cmd|' /c calc'!A0", "2030-01-01");
        assertThat(asQa.page("/shop/gauges.csv").lines().filter(line -> line.startsWith(code + ",")))
                .singleElement()
                .satisfies(line -> assertThat(line)
                        .contains(",'=cmd|' /c calc'!A0,")
                        .contains(",2026-03-10,2030-01-01,")
                        .contains(",0,600,0.01,0.012,"));
    }

    private String calibrated(String what, String due) {
        String code = register.register(hands.act(qa), next(), entry(what)).code();
        register.calibrated(hands.act(qa), code, LocalDate.of(2026, 3, 10), LocalDate.parse(due), "C-1", null, "");
        return code;
    }

    private static NewGauge entry(String what) {
        GaugeRange range = new GaugeRange(
                "HEIGHT",
                "mm",
                BigDecimal.ZERO,
                new BigDecimal("600"),
                new BigDecimal("0.01"),
                new BigDecimal("0.012"),
                null,
                "certificate");
        return new NewGauge(what, null, "", false, List.of(range));
    }

    /** The whole register: other tests leave gauges in the same shop, so it may go on over several pages. */
    private String everyPage(String path) throws Exception {
        StringBuilder all = new StringBuilder();
        String html = asQa.page(path);
        all.append(html);
        Matcher later = LATER.matcher(html);
        while (later.find()) {
            html = asQa.page(later.group(1).replace("&amp;", "&"));
            all.append(html);
            later = LATER.matcher(html);
        }
        return all.toString();
    }

    private static String next() {
        return "GP-" + NUMBER.incrementAndGet();
    }
}
