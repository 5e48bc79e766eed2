package org.trammel.shop.coats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.when;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.materials.NewPowderSheet;
import org.trammel.shop.materials.PowderSheets;
import org.trammel.shop.orders.OrderedColours;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;

/** The sheet of a coat at a tablet and for programs: no way leads past the margin. */
class CoatPagesTest extends AtTheBooth {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Crew people;

    @Autowired
    private OrderedColours ordered;

    @Autowired
    private PowderSheets sheets;

    @Test
    void theSheetTakesWhatWasReadAndSaysWhatItMeans() throws Exception {
        inForce("AL6061");
        Floor.Frame frame = atTheCoat();
        String sheet = "/coats/" + at(frame);
        assertThat(page("/station/" + frame.serial())).contains("href=\"" + sheet + "\"");
        assertThat(page(sheet)).contains("Not measured at this operation", "Earth the hook");
        form(
                sheet + "/air",
                "air",
                "21",
                "humidity",
                "68",
                "metal",
                "17,2",
                "airGauge",
                hygrometer,
                "metalGauge",
                thermometer);
        assertThat(page(sheet)).contains("not conforming", "Wait until the metal is at 17,9 °C");
        assertThat(form(sheet + "/air", "air", "21", "humidity", "x", "metal", "18,5")
                        .getStatus())
                .isEqualTo(422);
        form(
                sheet + "/air",
                "air",
                "21",
                "humidity",
                "68",
                "metal",
                "18,5",
                "airGauge",
                hygrometer,
                "metalGauge",
                thermometer);
        form(sheet + "/spray", "lot", powderLot(null), "earth", "0,4", "gauge", ohms);
        assertThat(page(sheet)).contains("3,63 K", "All 2 measured", "0,4 MΩ").doesNotContain("not conforming");
    }

    @Test
    void theSheetTellsTheOrderedColourAndWhatCuresThePowder() throws Exception {
        inForce("AL6061");
        Floor.Frame frame = atTheCoat();
        when(ordered.of(frame.orderId())).thenReturn(List.of("sand"));
        String sheet = "/coats/" + at(frame);
        assertThat(page(sheet)).contains("Ordered: sand");
        String lot = powderLot(null);
        sheets.enter(
                crew.act(qa),
                lot,
                new NewPowderSheet(
                        "sand",
                        List.of(
                                new NewPowderSheet.Pair(new BigDecimal("20"), new BigDecimal("160")),
                                new NewPowderSheet.Pair(new BigDecimal("10"), new BigDecimal("180"))),
                        null,
                        null,
                        null,
                        "sheet of a test"));
        form(sheet + "/spray", "lot", lot, "earth", "0,4", "gauge", ohms);
        assertThat(page(sheet)).contains(lot, "Cures by its sheet in 20 min at 160 °C or 10 min at 180 °C");
    }

    @Test
    void aProgramGetsPastNothing() throws Exception {
        inForce("AL6061");
        Floor.Frame frame = atTheCoat();
        tick(frame, "booth clean");
        String coats = "/api/v1/coats/" + at(frame);
        json(coats + "/spray", "{\"lot\":\"" + powderLot(null) + "\",\"earthMOhm\":0.4,\"gauge\":\"" + ohms + "\"}");
        String air = "{\"airDegC\":21,\"humidityPercent\":68,\"metalDegC\":%s,\"airGauge\":\"" + hygrometer
                + "\",\"metalGauge\":\"" + thermometer + "\"}";
        assertThat(json(coats + "/air", air.formatted("17.2")).getContentAsString())
                .contains("\"overIce\":false", "\"wanted_K\":3");
        String step = "{\"steps\":[" + floor.at(frame).steps().get(1).stepId() + "]}";
        MockHttpServletResponse refused = json("/api/v1/ticks", step);
        assertThat(refused.getStatus()).isEqualTo(409);
        assertThat(refused.getContentAsString()).contains("Wait until the metal is at 17,9 °C");
        json(coats + "/air", air.formatted("18.5"));
        assertThat(json("/api/v1/ticks", step).getStatus()).isLessThan(300);
    }

    @Test
    void aReaderSeesItWithoutForms() throws Exception {
        inForce("AL6061");
        Floor.Frame frame = atTheCoat();
        long auditor = floor.hire(Role.AUDITOR);
        String seen = mvc.perform(get("/coats/" + at(frame)).with(Signed.on(people.byId(auditor))))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(seen).contains("Metal over the dew point").doesNotContain("Keep air and metal");
    }

    private String page(String address) throws Exception {
        MockHttpServletResponse answer = mvc.perform(get(address).with(Signed.atTablet(people.byId(worker), null, "1")))
                .andReturn()
                .getResponse();
        assertThat(answer.getStatus()).as(address).isEqualTo(200);
        return answer.getContentAsString();
    }

    private MockHttpServletResponse form(String address, String... fields) throws Exception {
        MockHttpServletRequestBuilder sent = post(address)
                .with(Signed.atTablet(people.byId(worker), null, "1"))
                .with(csrf())
                .param("actId", UUID.randomUUID().toString());
        for (int i = 0; i < fields.length; i += 2) {
            sent.param(fields[i], fields[i + 1]);
        }
        return mvc.perform(sent).andReturn().getResponse();
    }

    private MockHttpServletResponse json(String address, String body) throws Exception {
        return mvc.perform(post(address)
                        .with(Signed.on(people.byId(worker)))
                        .with(csrf())
                        .header("Act-Id", UUID.randomUUID().toString())
                        .contentType("application/json")
                        .content(body))
                .andReturn()
                .getResponse();
    }
}
