package org.trammel.shop.orders;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.trammel.shop.ShopTest;
import org.trammel.shop.Statements;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.web.Formats;

@ShopTest
class OrderPagesTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private TestCrew hands;

    @Autowired
    private Crew crew;

    @Autowired
    private OrderEntry entry;

    @Autowired
    private OrderBook book;

    @Autowired
    private Orders orders;

    @Autowired
    private Statements statements;

    @Autowired
    private Formats formats;

    private long ownerId;
    private RequestPostProcessor owner;

    @BeforeEach
    void hire() {
        ownerId = hands.hire(Role.OWNER);
        owner = Signed.on(crew.byId(ownerId));
    }

    @Test
    void anOrderIsEnteredAndKeptUpByItsForms() throws Exception {
        String sheet = mvc.perform(hardtail()
                        .param("rider.height", "178,5")
                        .param("price", "2850,50")
                        .param("promised", "2026-05-22")
                        .param("ownPart.what", "shock")
                        .param("ownPart.description", "210 by 55"))
                .andExpect(status().isSeeOther())
                .andReturn()
                .getResponse()
                .getRedirectedUrl();
        long id = Long.parseLong(sheet.substring("/orders/".length()));
        assertThat(page(sheet))
                .contains("178,5", "2850,50", "22 May 2026", "210 by 55", "Rider One", "Begin the drawing");
        act(id, "/promise", "promised", "2026-06-05", "promiseReason", "tubes are late");
        act(id, "/price", "price", "2900", "priceReason", "dearer tubes");
        act(id, "/cost", "kind", "REWORK", "hours", "2,5", "costReason", "recut");
        act(id, "/changes", "asked", "another colour");
        act(id, "/serial");
        long part = number("select min(id) from own_part where order_id = ?", id);
        act(id, "/parts/" + part + "/arrival", "measured", "209,8 by 55");
        long wish = number("select min(id) from order_change where order_id = ?", id);
        act(id, "/changes/" + wish, "agreed", "true", "answer", "agreed by telephone");
        assertThat(page(sheet))
                .contains("5 Jun 2026", "tubes are late", "2900", "2,5", "another colour", "agreed by telephone")
                .contains("209,8 by 55", "155,00");
        mvc.perform(form("/orders/" + id + "/design")).andExpect(status().isSeeOther());
        assertThat(orders.byId(id).state()).isEqualTo(OrderState.DESIGNING);
        assertThat(page("/orders")).contains(orders.byId(id).number());
    }

    @Test
    void aFrameThatIsNotReleasedYetHasNoStoryToOpen() throws Exception {
        long id = order();
        act(id, "/serial");
        String serial = orders.byId(id).serial();
        assertThat(page("/orders/" + id)).contains(formats.mark(serial)).doesNotContain("href=\"/frames/" + serial);
    }

    @Test
    void whatWasTypedIsShownAgainWithTheFieldAtFault() throws Exception {
        MvcResult refused = mvc.perform(
                        hardtail().param("rider.height", "1.785,0").header("Referer", "http://localhost/orders/new"))
                .andExpect(redirectedUrl("/orders/new"))
                .andReturn();
        String shown = mvc.perform(get("/orders/new").with(owner).flashAttrs(refused.getFlashMap()))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(shown).contains("value=\"1.785,0\"", "can be read two ways", "Hardtail 29 trail", "Rider One");
    }

    @Test
    void everythingUnusualOfAnOrderIsAskedAboutAtOnce() throws Exception {
        mvc.perform(hardtail().param("rider.height", "216").param("price", "0"))
                .andExpect(status().is(428))
                .andExpect(content().string(containsString("Body height 216 cm is unusual")))
                .andExpect(content().string(containsString("A price of 0 EUR is unusual")));
    }

    @Test
    void theSecondPressOfALateChangeIsRefusedAgain() throws Exception {
        long id = order();
        String edit = "/orders/" + id + "/edit";
        String seen = page(edit).replaceAll("(?s).*name=\"version\" value=\"([0-9]+)\".*", "$1");
        mvc.perform(change(edit, seen, "First frame")).andExpect(redirectedUrl("/orders/" + id));
        for (int press = 0; press < 2; press++) {
            MvcResult late = mvc.perform(change(edit, seen, "Second frame"))
                    .andExpect(redirectedUrl(edit))
                    .andReturn();
            String shown = mvc.perform(get(edit).with(owner).flashAttrs(late.getFlashMap()))
                    .andReturn()
                    .getResponse()
                    .getContentAsString();
            assertThat(shown)
                    .contains("name=\"version\" value=\"" + seen + "\"")
                    .contains("value=\"Second frame\"", "Kept by now: First frame.");
        }
        assertThat(orders.byId(id).description()).isEqualTo("First frame");
    }

    private MockHttpServletRequestBuilder change(String edit, String version, String description) {
        return form(edit)
                .param("metal", "AL6061")
                .param("kind", "HARDTAIL")
                .param("country", "GB")
                .param("description", description)
                .param("version", version)
                .header("Referer", "http://localhost" + edit);
    }

    @Test
    void aReasonThatIsMissingIsShownAtItsOwnForm() throws Exception {
        long id = order();
        MvcResult refused = mvc.perform(form("/orders/" + id + "/promise")
                        .param("promised", "2026-06-05")
                        .header("Referer", "http://localhost/orders/" + id))
                .andReturn();
        assertThat(((org.trammel.shop.web.Shown) refused.getFlashMap().get("refusal")).field())
                .isEqualTo("promiseReason");
    }

    @ParameterizedTest(name = "{0} is no day")
    @CsvSource({"2026-02-29", "2026-13-01", "2026-W53-1", "31.12.2026", "2026-06-31"})
    void aDayThatIsNoneIsRefused(String typed) throws Exception {
        mvc.perform(form("/orders/" + order() + "/promise")
                        .param("promised", typed)
                        .param("promiseReason", "tubes are late"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("is no day")));
    }

    @ParameterizedTest(name = "{0} is a day")
    @CsvSource({"2028-02-29", "2026-12-31", "2026-03-29", "2027-01-03"})
    void lastDaysLeapDaysAndTheDayTheClockIsMovedAreDays(String typed) throws Exception {
        mvc.perform(form("/orders/" + order() + "/promise")
                        .param("promised", typed)
                        .param("promiseReason", "tubes are late"))
                .andExpect(status().isSeeOther());
    }

    @ParameterizedTest(name = "price {0}")
    @CsvSource({"'1.234,5'", "'1,2,3'", "''", "1e308", "NaN", "Infinity", "0x1F", "'12 50'", "'12,345'", "'-1'"})
    void aPriceThatCannotBeReadIsRefused(String typed) throws Exception {
        mvc.perform(form("/orders/" + order() + "/price").param("price", typed).param("priceReason", "first"))
                .andExpect(status().isUnprocessableContent());
    }

    @Test
    void aRefusedPriceIsWrittenAsItWasTypedAndTheFieldNamesItsCurrency() throws Exception {
        mvc.perform(form("/orders/" + order() + "/price")
                        .param("price", "2850,505")
                        .param("priceReason", "first")
                        .accept(MediaType.APPLICATION_JSON))
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.detail").value(startsWith("A price of 2850,505 cannot be")));
        String fresh = page("/orders/new");
        assertThat(fresh.substring(fresh.indexOf("name=\"price\"")).substring(0, 400))
                .contains(">EUR</span>");
    }

    @Test
    void cancellingAsksWithWhatIsUnderWayAndIsSentAgainWithTheReason() throws Exception {
        long id = order();
        orders.reserveSerial(hands.act(ownerId), id);
        MvcResult asked = mvc.perform(form("/orders/" + id + "/cancellation")
                        .param("cancelReason", "customer withdrew")
                        .header("Referer", "http://localhost/orders/" + id))
                .andReturn();
        String shown = mvc.perform(get("/orders/" + id).with(owner).flashAttrs(asked.getFlashMap()))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(shown).contains("Still under way: the frame has serial", "name=\"confirm\" value=\"true\"");
        mvc.perform(form("/orders/" + id + "/cancellation")
                        .param("cancelReason", "customer withdrew")
                        .param("confirm", "true"))
                .andExpect(redirectedUrl("/orders/" + id));
        assertThat(page("/orders/" + id)).contains("customer withdrew");
    }

    @Test
    void theAuditorSeesOrdersAndMoneyButNobodysNames() throws Exception {
        long id = order();
        RequestPostProcessor auditor = Signed.on(crew.byId(hands.hire(Role.AUDITOR)));
        mvc.perform(get("/orders/" + id).with(auditor))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("2850")))
                .andExpect(content().string(not(containsString("Rider One"))))
                .andExpect(content().string(not(containsString("stiff hips"))));
        String csv = mvc.perform(get("/orders.csv").with(auditor))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(csv).contains("price,currency").doesNotContain("Rider One", "Harbour road", "contact");
        mvc.perform(get("/customers/" + customer(id)).with(auditor)).andExpect(status().isForbidden());
        mvc.perform(get("/api/v1/orders/" + id).with(auditor))
                .andExpect(content().string(not(containsString("Rider One"))));
    }

    /** The form is for whom it would enter something. */
    @Test
    void whoMayNotEnterAnOrderIsNotShownItsForm() throws Exception {
        long id = order();
        for (Role role : List.of(Role.AUDITOR, Role.QA_LEAD, Role.STATION_WORKER)) {
            RequestPostProcessor other = Signed.on(crew.byId(hands.hire(role)));
            mvc.perform(get("/orders/new").with(other))
                    .andExpect(status().isForbidden())
                    .andExpect(content().string(containsString("It is for the owner")));
            mvc.perform(get("/orders/" + id + "/edit").with(other)).andExpect(status().isForbidden());
        }
        mvc.perform(get("/orders/" + id + "/edit").with(owner)).andExpect(status().isOk());
    }

    @Test
    void aWorkerSeesTheRiderButNeitherPricesNorContacts() throws Exception {
        long id = order();
        RequestPostProcessor worker = Signed.on(crew.byId(hands.hire(Role.STATION_WORKER)));
        mvc.perform(get("/orders/" + id).with(worker))
                .andExpect(content().string(containsString("178")))
                .andExpect(content().string(not(containsString("2850"))))
                .andExpect(content().string(not(containsString("Rider One"))));
        String csv = mvc.perform(get("/orders.csv").with(worker))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(csv).doesNotContain("Rider One", "price");
    }

    @Test
    void anExportedTextIsNeverAFormula() throws Exception {
        mvc.perform(form("/orders")
                        .param("description", "=1+1")
                        .param("metal", "STEEL")
                        .param("kind", "STEEL_TIG")
                        .param("country", "SE")
                        .param("customer.name", "@SUM(A1)")
                        .param("customer.country", "SE"))
                .andExpect(status().isSeeOther());
        String csv = mvc.perform(get("/orders.csv").with(owner))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(csv).contains("'=1+1", "'@SUM(A1)").doesNotContain(",=1+1", ",@SUM");
    }

    @Test
    void listsAndSheetsCostTheSameHoweverMany() throws Exception {
        for (int i = 0; i < 3; i++) {
            order();
        }
        int few = statements.during(() -> page("/orders")).size();
        for (int i = 0; i < 10; i++) {
            book.cancel(hands.act(ownerId), order(), "customer withdrew", true);
            order();
        }
        assertThat(statements.during(() -> page("/orders"))).hasSize(few).hasSizeLessThanOrEqualTo(4);
        assertThat(statements.during(() -> page("/orders/past"))).hasSizeLessThanOrEqualTo(4);
        long id = order();
        assertThat(statements.during(() -> page("/orders/" + id))).hasSizeLessThanOrEqualTo(16);
    }

    @Test
    void pastOrdersArePagedByWhereTheLastPageEnded() throws Exception {
        long first = order();
        book.cancel(hands.act(ownerId), first, "customer withdrew", true);
        for (int i = 0; i < 50; i++) {
            book.cancel(hands.act(ownerId), order(), "customer withdrew", true);
        }
        String page = page("/orders/past");
        assertThat(page).contains("Earlier ones").doesNotContain("href=\"/orders/" + first + "\"");
        String next = page.replaceAll("(?s).*href=\"(/orders/past\\?before=[^\"]*)\".*", "$1")
                .replace("&amp;", "&");
        String url = java.net.URLDecoder.decode(next, java.nio.charset.StandardCharsets.UTF_8);
        assertThat(page(url)).contains("href=\"/orders/" + first + "\"");
    }

    @Test
    void whatIsTypedBesideAChoiceOrOfAPartWithoutANameIsNotDropped() throws Exception {
        long known = customer(order());
        mvc.perform(hardtail().param("customerId", String.valueOf(known)).accept(MediaType.APPLICATION_JSON))
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.field").value("customer.name"));
        mvc.perform(hardtail().param("ownPart.dueOn", "2026-05-01").accept(MediaType.APPLICATION_JSON))
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.field").value("ownPart.what"));
    }

    private long order() {
        return entry.enter(hands.act(ownerId), TakenOrder.hardtail()).id();
    }

    private MockHttpServletRequestBuilder hardtail() {
        return form("/orders")
                .param("description", "Hardtail 29 trail")
                .param("metal", "AL6061")
                .param("kind", "HARDTAIL")
                .param("category", "MOUNTAIN")
                .param("country", "se")
                .param("frontBrakeLever", "LEFT")
                .param("components", "fork: 541 mm, offset 44")
                .param("customer.name", "Rider One")
                .param("customer.contact", "Harbour road 3")
                .param("customer.country", "SE");
    }

    private void act(long id, String path, String... fields) throws Exception {
        MockHttpServletRequestBuilder form = form("/orders/" + id + path);
        for (int i = 0; i < fields.length; i += 2) {
            form.param(fields[i], fields[i + 1]);
        }
        mvc.perform(form).andExpect(redirectedUrl("/orders/" + id));
    }

    private MockHttpServletRequestBuilder form(String path) {
        return post(path)
                .param("actId", UUID.randomUUID().toString())
                .with(csrf())
                .with(owner);
    }

    private String page(String path) throws Exception {
        return mvc.perform(get(path).with(owner))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    private long customer(long order) {
        return number("select customer_id from shop_order where id = ?", order);
    }

    private long number(String sql, long order) {
        return jdbc.sql(sql).param(order).query(Long.class).single();
    }
}
