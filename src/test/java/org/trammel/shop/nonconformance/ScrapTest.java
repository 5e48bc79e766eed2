package org.trammel.shop.nonconformance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import com.jayway.jsonpath.JsonPath;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Signed;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;

/** Scrap is meant, and once it is done every sheet says so. */
class ScrapTest extends AtTheDesk {

    @Autowired
    private Holds holds;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Crew crew;

    @Test
    void aScrappedFrameIsCalledScrappedEverywhereAndItsHoldsWaitForNobody() throws Exception {
        WholeShop.Frame frame = found();
        holds.place(
                shop.act(worker),
                new Holds.Request(
                        frame.travellerId(),
                        HoldScope.FRAME,
                        null,
                        HoldReason.OVEN_TRACE,
                        "its run is doubted",
                        "by hand",
                        Set.of()));
        int atWork = atWork();
        assertThat(page("/qa", qa)).contains(frame.serial());
        deciding.propose(shop.act(qa), of(frame), complete(Decision.SCRAP, null));
        assertThat(page("/qa", qa)).doesNotContain(frame.serial());
        assertThat(page("/frames/" + frame.serial(), qa))
                .contains("<span>scrapped</span>", "Holds it was scrapped under")
                .doesNotContain("<span>on hold</span>", "Open holds");
        assertThat(page("/orders/" + frame.orderId(), owner))
                .contains("<span>frame scrapped</span>", "The frame was scrapped")
                .doesNotContain("In the shop");
        assertThat(page("/run", owner)).contains("frame scrapped: call the order off", "/frames/" + frame.serial());
        assertThat(atWork()).isEqualTo(atWork - 1);
    }

    @Test
    void scrapIsAskedAboutWithItsCostUntilItIsConfirmed() throws Exception {
        WholeShop.Frame frame = found();
        long id = of(frame);
        decide(id, "\"decision\":\"SCRAP\",\"words\":\"cracked\",\"materialCost\":120")
                .andExpect(status().isPreconditionRequired())
                .andExpect(jsonPath("$.field").value("decision"))
                .andExpect(jsonPath("$.detail").value(org.hamcrest.Matchers.containsString("it costs 120 EUR")));
        assertThat(state(id)).isEqualTo(NonconformanceState.OPEN);
        decide(id, "\"decision\":\"SCRAP\",\"words\":\"cracked\",\"fromCode\":\"080\",\"confirm\":true")
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.state").value("DECIDED"))
                .andExpect(jsonPath("$.fromCode").isEmpty());
        assertThat(page("/nonconformances/" + id, owner))
                .contains("characteristic 080-1")
                .doesNotContain("Done over from operation");
    }

    @Test
    void theHoldOfANonconformanceIsLiftedByItsDecision() throws Exception {
        WholeShop.Frame frame = found();
        String lifts = "ifted by the decision on " + deciding.byId(of(frame)).number();
        assertThat(page("/frames/" + frame.serial(), owner)).contains(lifts);
        assertThat(page("/qa", qa)).contains(lifts);
    }

    @Test
    void aReadingOfOneDecimalIsShownWithOneDecimal() throws Exception {
        WholeShop.Frame frame = found(SmallRoute.of(
                SmallRoute.op("080").characteristic(measured("080-1", 1)).sheet()));
        assertThat(page("/nonconformances/" + of(frame), owner))
                .contains("<b>0,5\u00a0mm</b>")
                .doesNotContain("0,500");
    }

    private static CharacteristicSheet measured(String code, int decimals) {
        return new CharacteristicSheet(
                code,
                "height",
                "mm",
                decimals,
                false,
                BigDecimal.ZERO,
                new BigDecimal("-0.3"),
                new BigDecimal("0.3"),
                "CALLIPER",
                List.of("once"),
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
                "test");
    }

    private int atWork() throws Exception {
        return JsonPath.read(page("/api/v1/shop/run", owner), "$.atWork");
    }

    private ResultActions decide(long id, String body) throws Exception {
        return mvc.perform(post("/api/v1/nonconformances/" + id + "/decision")
                .with(Signed.on(crew.byId(qa)))
                .with(csrf())
                .contentType(MediaType.APPLICATION_JSON)
                .content("{\"actId\":\"" + UUID.randomUUID() + "\"," + body + "}"));
    }

    private String page(String path, long reader) throws Exception {
        return mvc.perform(get(path).with(Signed.on(crew.byId(reader))))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }
}
