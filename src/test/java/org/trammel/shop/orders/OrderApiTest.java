package org.trammel.shop.orders;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import tools.jackson.databind.json.JsonMapper;

@ShopTest
class OrderApiTest {

    private static final String HARDTAIL = """
            {"details": {"description": "Hardtail 29", "metal": "AL6061", "kind": "HARDTAIL", "category": "MOUNTAIN",
              "country": "SE", "frontBrakeLever": "LEFT", "rider": {"heightCm": 178.5}},
             "customer": {"name": "Rider One", "contact": "Harbour road 3", "country": "SE"},
             "price": 2850, "promised": "2026-05-22"}""";

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestCrew hands;

    @Autowired
    private Crew crew;

    private RequestPostProcessor owner;

    @BeforeEach
    void hire() {
        owner = Signed.on(crew.byId(hands.hire(Role.OWNER)));
    }

    @Test
    void aProgramTakesAnOrderToItsDraft() throws Exception {
        String act = UUID.randomUUID().toString();
        long id = id(send("/api/v1/orders", act, HARDTAIL).andExpect(status().isOk()), "id");
        assertThat(id(send("/api/v1/orders", act, HARDTAIL), "id")).isEqualTo(id);
        String order = "/api/v1/orders/" + id;
        send(order + "/promise", "{\"promised\": \"2026-06-05\", \"reason\": \"tubes are late\"}")
                .andExpect(jsonPath("$.promised").value("2026-06-05"));
        send(order + "/costs", "{\"kind\": \"REWORK\", \"hours\": 2.5, \"reason\": \"recut\"}")
                .andExpect(status().isOk());
        long revision = id(send(order + "/design", "{}"), "revisionId");
        String design = "/api/v1/designs/" + revision;
        send(design + "/draft", """
                        {"description": "Hardtail 29", "metal": "AL6061", "kind": "HARDTAIL",
                         "geometry": {"HEAD_ANGLE": 65.5}, "components": [{"what": "fork", "description": "541 mm"}]}""").andExpect(jsonPath("$.geometry.HEAD_ANGLE").value("65.5"));
        send(design + "/gate", "{\"check\": \"CLOSURE\", \"answer\": \"DECIDED\", \"decision\": \"redrawn by hand\"}")
                .andExpect(status().isOk());
        mvc.perform(get(design + "/gate").with(owner)).andExpect(content().string(containsString("redrawn by hand")));
        mvc.perform(get(order).with(owner))
                .andExpect(jsonPath("$.money.hours").value(2.5))
                .andExpect(jsonPath("$.customer.name").value("Rider One"))
                .andExpect(jsonPath("$.details.rider.height").value(178.5));
    }

    @Test
    void aRefusalIsAProblemDocumentOfThreePartsThatNamesTheField() throws Exception {
        send("/api/v1/orders", HARDTAIL.replace("178.5", "70"))
                .andExpect(status().is(428))
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON))
                .andExpect(jsonPath("$.title").value("The order was not entered."))
                .andExpect(jsonPath("$.detail").value(containsString("70 cm is unusual")))
                .andExpect(jsonPath("$.instead").value(containsString("177,8 cm")))
                .andExpect(jsonPath("$.field").value("rider.height"));
        send("/api/v1/orders", HARDTAIL.replace("178.5", "70").replace("\"price\"", "\"confirm\": true, \"price\""))
                .andExpect(status().isOk());
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e308", "1e999999999", "1e-999999999", "NaN", "\"178\"", "0x10", "\"\""})
    void aFigureNoWorkshopHasIsRefusedAtTheDoor(String figure) throws Exception {
        send("/api/v1/orders", HARDTAIL.replace("178.5", figure)).andExpect(status().isBadRequest());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0001-01-01", "1900-01-01", "9999-12-31", "2026-02-30", "22.05.2026", "tomorrow", ""})
    void aDayNoWorkshopMeansIsRefusedAtTheDoor(String day) throws Exception {
        send("/api/v1/orders", HARDTAIL.replace("2026-05-22", day))
                .andExpect(status().isBadRequest())
                .andExpect(jsonPath("$.detail").value(containsString("promised")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "{\"details\": {}}",
                "{\"details\": {\"description\": \"x\", \"metal\": \"AL6061\", \"kind\": \"HARDTAIL\", \"country\": \"SE\"}}",
                "{\"details\": {\"description\": \"x\", \"metal\": \"WOOD\", \"kind\": \"HARDTAIL\", \"country\": \"SE\"},"
                        + " \"customer\": {\"name\": \"x\", \"country\": \"SE\"}}",
                "{\"details\": {\"description\": \"x\", \"metal\": \"TI\", \"kind\": \"HARDTAIL\", \"country\": \"XX\"},"
                        + " \"customer\": {\"name\": \"x\", \"country\": \"SE\"}}",
                "{\"details\": {\"description\": \"x\", \"metal\": \"TI\", \"kind\": \"HARDTAIL\", \"country\": \"SE\"},"
                        + " \"customer\": {}}"
            })
    void whatIsMissingIsNamedAndNeverAnIncident(String body) throws Exception {
        send("/api/v1/orders", body)
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.field").isNotEmpty());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/promise {}",
                "/price {}",
                "/costs {}",
                "/cancellation {}",
                "/changes {}",
                "/parts {}",
                "/details {}",
                "/promise {\"promised\": \"2026-06-05\"}"
            })
    void anEmptyBodyIsRefusedWithItsField(String request) throws Exception {
        long id = id(send("/api/v1/orders", HARDTAIL), "id");
        String[] parts = request.split(" ", 2);
        send("/api/v1/orders/" + id + parts[0], parts[1])
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.field").isNotEmpty());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/draft {}",
                "/nominals {\"given\": {\"080-7\": {}}}",
                "/approval {}",
                "/gate {}",
                "/withdrawal {}",
                "/notes {}"
            })
    void anEmptyBodyToADesignIsRefusedWithItsField(String request) throws Exception {
        long id = id(send("/api/v1/orders", HARDTAIL), "id");
        long revision = id(send("/api/v1/orders/" + id + "/design", "{}"), "revisionId");
        String[] parts = request.split(" ", 2);
        send("/api/v1/designs/" + revision + parts[0], parts[1])
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.field").isNotEmpty());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"metal\": \"AL6061\", \"kind\": \"HARDTAIL\"|\"metal\": \"TI\", \"kind\": \"STEEL_TIG\"|kind",
                "\"kind\": \"HARDTAIL\"|\"kind\": \"REPAIR\"|returnedSerial",
                "\"price\": 2850, \"promised\": \"2026-05-22\"|\"percentile\": 0|percentile",
                "\"price\": 2850, \"promised\": \"2026-05-22\"|\"percentile\": 101|percentile",
                "\"price\": 2850, \"promised\": \"2026-05-22\"|\"percentile\": 85.5|percentile",
                "\"promised\": \"2026-05-22\"|\"percentile\": 90|promised",
                "\"price\": 2850|\"customerId\": 1|customer.name"
            })
    void whatContradictsItselfIsRefusedAndNothingIsDropped(String usual, String instead, String field)
            throws Exception {
        assertThat(HARDTAIL).contains(usual);
        send("/api/v1/orders", HARDTAIL.replace(usual, instead))
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.field").value(field));
    }

    @Test
    void aCostBelowZeroIsAskedAboutUntilItIsConfirmed() throws Exception {
        long id = id(send("/api/v1/orders", HARDTAIL), "id");
        String body = "{\"kind\": \"MATERIAL\", \"amount\": -99999, \"reason\": \"slip\", \"confirm\": %s}";
        send("/api/v1/orders/" + id + "/costs", body.formatted(false))
                .andExpect(status().isPreconditionRequired())
                .andExpect(jsonPath("$.field").value("amount"));
        send("/api/v1/orders/" + id + "/costs", body.formatted(true)).andExpect(status().isOk());
    }

    @Test
    void aDateThatIsRefusedIsNotSaidToBeAPromiseKept() throws Exception {
        long id = id(send("/api/v1/orders", HARDTAIL), "id");
        send("/api/v1/orders/" + id + "/promise", "{\"promised\": \"2020-01-01\", \"reason\": \"slip\"}")
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.title").value(org.hamcrest.Matchers.endsWith("got no new date.")));
    }

    @Test
    void whatIsNotThereIsSaidToBeMissing() throws Exception {
        mvc.perform(get("/api/v1/orders/999999999").with(owner)).andExpect(status().isNotFound());
        mvc.perform(get("/api/v1/designs/999999999").with(owner)).andExpect(status().isNotFound());
        send("/api/v1/orders/999999999/price", "{\"price\": 1, \"reason\": \"x\"}")
                .andExpect(status().isNotFound());
    }

    private ResultActions send(String path, String body) throws Exception {
        return send(path, UUID.randomUUID().toString(), body);
    }

    private ResultActions send(String path, String act, String body) throws Exception {
        return mvc.perform(post(path)
                .header("Act-Id", act)
                .contentType(MediaType.APPLICATION_JSON)
                .content(body)
                .with(csrf())
                .with(owner));
    }

    private static long id(ResultActions answer, String field) throws Exception {
        return JsonMapper.shared()
                .readTree(answer.andReturn().getResponse().getContentAsString())
                .get(field)
                .asLong();
    }
}
