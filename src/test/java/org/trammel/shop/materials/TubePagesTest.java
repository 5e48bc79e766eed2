package org.trammel.shop.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.put;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.hamcrest.Matchers;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.trammel.shop.ShopTest;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.travellers.Travellers;

/** The sheet of tubes and its API: the same verbs, the same refusals. */
@ShopTest(properties = "trammel.test.database=tube_issue")
class TubePagesTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private Crew crew;

    private WholeShop shop;
    private AtTheRack rack;
    private long lead;
    private RequestPostProcessor signedOn;
    private String tubes;

    @BeforeEach
    void open() {
        shop = new WholeShop(beans);
        lead = shop.hire(Role.QA_LEAD);
        signedOn = Signed.on(crew.byId(lead));
        rack = new AtTheRack(beans, shop, lead);
        tubes = "/tubes/" + shop.at(rack.frame()).line().operationId();
    }

    @Test
    void aTubeIsIssuedByItsFormAndTheNextPlaceStandsReady() throws Exception {
        String lot = rack.whole();
        assertThat(page(tubes))
                .contains("0 of 9 places", "35 × 1,4 mm", "31,8 × 0,9/0,6/0,9 mm, butted", "54 mm outside");
        mvc.perform(form(tubes).param("place", "DOWN_TUBE").param("lot", lot)).andExpect(redirectedUrl(tubes));
        assertThat(page(tubes)).contains("1 of 9 places", lot, "heat 5K2217");
        mvc.perform(form(tubes)
                        .param("place", "TOP_TUBE")
                        .param("lot", lot)
                        .param("quantity", "1,2,3")
                        .accept(MediaType.APPLICATION_JSON))
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.field").value("quantity"));
    }

    @Test
    void aLotsSectionsAreTypedAndShown() throws Exception {
        String lot = rack.lot();
        assertThat(page("/shop/lots/" + lot)).contains("not stated", "Record the sections");
        mvc.perform(form("/shop/lots/" + lot + "/sections").param("sections", "35 × 1,4\r\n38 × 0,9/0,6/0,9"))
                .andExpect(redirectedUrl("/shop/lots/" + lot));
        assertThat(page("/shop/lots/" + lot)).contains("35 × 1,4 mm, 38 × 0,9/0,6/0,9 mm");
        mvc.perform(form("/shop/lots/" + lot + "/sections")
                        .param("sections", "thirty-five")
                        .accept(MediaType.APPLICATION_JSON))
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.field").value("sections"));
        assertThat(page("/shop/lots/" + lot)).contains("35 × 1,4 mm, 38 × 0,9/0,6/0,9 mm");
    }

    @Test
    void theApiIssuesAndRefusesAsTheSheetDoes() throws Exception {
        String lot = rack.whole();
        String heavy = rack.lot("42 × 1,6");
        mvc.perform(get("/api/v1" + tubes).with(signedOn))
                .andExpect(jsonPath("$.length()").value(9))
                .andExpect(jsonPath("$[0].place.code").value("DOWN_TUBE"))
                .andExpect(jsonPath("$[0].issued").value(Matchers.nullValue()));
        mvc.perform(json(post("/api/v1" + tubes), "{\"place\": \"DOWN_TUBE\", \"lot\": \"" + heavy + "\"}"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.field").value("lot"))
                .andExpect(jsonPath("$.detail").value(Matchers.containsString("asks for 35 × 1,4 mm")));
        mvc.perform(json(post("/api/v1" + tubes), "{\"lot\": \"" + lot + "\"}"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.field").value("place"));
        mvc.perform(json(post("/api/v1" + tubes), "{\"place\": \"DOWN_TUBE\", \"lot\": \"" + lot + "\"}"))
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$[0].issued.section.outside_mm").value(35));
        mvc.perform(json(put("/api/v1/lots/" + heavy + "/sections"), """
                        {"sections": [{"outside_mm": 42, "wall_mm": 21}]}""")).andExpect(status().isUnprocessableContent());
        mvc.perform(json(put("/api/v1/lots/" + heavy + "/sections"), """
                        {"sections": [{"outside_mm": 42, "wall_mm": 1.6}, {"outside_mm": 35, "wall_mm": 1.4}]}"""))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.length()").value(2));
        mvc.perform(get("/api/v1/tubes/987654321").with(signedOn)).andExpect(status().isNotFound());
    }

    @Test
    void whoeverWaitsForTheSameSectionIsNamedWhenATubeIsCutAgain() {
        // A section of its own: every test of this database has frames that wait for the others.
        String outside = "33." + (100 + new java.util.Random().nextInt(900));
        WholeShop.Frame first = asking(outside);
        WholeShop.Frame second = asking(outside);
        String three = rack.lot(LotKind.TUBE, "T6", 3, outside + " × 1,4");
        TubeIssues issues = beans.getBean(TubeIssues.class);
        Lots lots = beans.getBean(Lots.class);
        issues.issue(shop.act(lead), shop.at(first).line().operationId(), AtTheRack.scan("DOWN_TUBE", three));
        scrap(lots, first);
        assertThat(calls(three)).as("two are left for two").isEmpty();
        issues.issue(shop.act(lead), shop.at(first).line().operationId(), AtTheRack.scan("DOWN_TUBE", three));
        scrap(lots, first);
        assertThat(calls(three))
                .singleElement(org.assertj.core.api.InstanceOfAssertFactories.STRING)
                .contains("1 left of its section", shop.sheet(second).head().mark() + " down tube");
    }

    private void scrap(Lots lots, WholeShop.Frame frame) {
        lots.madeOf(frame.serial()).stream()
                .filter(made -> !made.scrapped())
                .forEach(made -> lots.scrap(shop.act(lead), made.useId(), "dented"));
    }

    private WholeShop.Frame asking(String outside) {
        WholeShop.Frame frame = rack.frame();
        beans.getBean(JdbcClient.class)
                .sql("update design_geometry set amount = ? where input = 'DOWN_TUBE_OUTSIDE' and revision_id ="
                        + " (select design_revision_id from traveller where id = ?)")
                .params(new BigDecimal(outside), frame.travellerId())
                .update();
        return frame;
    }

    private List<String> calls(String lot) {
        return beans.getBean(Travellers.class).openCalls().stream()
                .map(Travellers.CallLine::words)
                .filter(words -> words.contains(lot))
                .toList();
    }

    private String page(String path) throws Exception {
        return mvc.perform(get(path).with(signedOn))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString(StandardCharsets.UTF_8);
    }

    private MockHttpServletRequestBuilder form(String path) {
        return post(path)
                .with(signedOn)
                .with(csrf())
                .param("actId", UUID.randomUUID().toString());
    }

    private MockHttpServletRequestBuilder json(MockHttpServletRequestBuilder request, String body) {
        return request.with(signedOn)
                .with(csrf())
                .header("Act-Id", UUID.randomUUID().toString())
                .contentType(MediaType.APPLICATION_JSON)
                .content(body);
    }
}
