package org.trammel.shop.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.nio.charset.MalformedInputException;
import java.time.LocalDate;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpSession;
import org.springframework.stereotype.Controller;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;
import org.trammel.shop.records.Refusal;

class RefusalTest {

    private static final String FROM = "http://localhost/samples/desk";

    private final MockMvc mvc = Face.with(Samples.class, Refusing.class);

    @Test
    void aRefusedFormGoesBackToItsPageWhichSaysTheThreePartsAndKeepsWhatWasTyped() throws Exception {
        MockHttpSession session = new MockHttpSession();
        mvc.perform(post("/refusing/form")
                        .session(session)
                        .header(HttpHeaders.REFERER, FROM)
                        .param("name", "<b>Ines</b>")
                        .param("pin", "123456"))
                .andExpect(status().isSeeOther())
                .andExpect(redirectedUrl("/samples/desk"));
        String html = body(mvc.perform(get("/samples/desk").session(session)).andReturn());
        assertThat(html)
                .contains("The person was not added.", "Another person has this name.", "Choose another.")
                .contains("value=\"&lt;b&gt;Ines&lt;/b&gt;\"")
                .contains("aria-invalid=\"true\"")
                .contains("role=\"alert\"")
                .contains("autofocus")
                .doesNotContain("123456");
        assertThat(body(mvc.perform(get("/samples/desk").session(session)).andReturn()))
                .doesNotContain("The person was not added.");
    }

    @Test
    void anUnlikelyActIsAskedAgainWithWhatWasTypedAndTheSecretTypedOnceMore() throws Exception {
        MockHttpSession session = new MockHttpSession();
        mvc.perform(post("/refusing/ask")
                        .session(session)
                        .header(HttpHeaders.REFERER, FROM)
                        .param("value", "12,5")
                        .param("value", "12,6")
                        .param("pin", "123456"))
                .andExpect(status().isSeeOther());
        String html = body(mvc.perform(get("/samples/desk").session(session)).andReturn());
        assertThat(html)
                .contains("action=\"/refusing/ask\"")
                .contains("name=\"confirm\" value=\"true\"")
                .contains("name=\"value\" value=\"12,5\"")
                .contains("name=\"value\" value=\"12,6\"")
                .contains("type=\"password\" autocomplete=\"off\" id=\"again-pin\" name=\"pin\"")
                .doesNotContain("123456");
    }

    @Test
    void aFormFromAnotherSiteIsNotSentBackThere() throws Exception {
        mvc.perform(post("/refusing/form").header(HttpHeaders.REFERER, "http://elsewhere.example/x"))
                .andExpect(status().is(422))
                .andExpect(header().doesNotExist(HttpHeaders.LOCATION));
    }

    @Test
    void aProgramGetsAProblemDocument() throws Exception {
        mvc.perform(post("/api/v1/refusing")
                        .contentType(MediaType.APPLICATION_JSON)
                        .content("{}"))
                .andExpect(status().isConflict())
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON))
                .andExpect(jsonPath("$.title").value("The step was not ticked."))
                .andExpect(jsonPath("$.detail").value("The frame is on hold."))
                .andExpect(jsonPath("$.instead").value("Call the QA lead."))
                .andExpect(jsonPath("$.type").value("urn:trammel:refusal:state"))
                .andExpect(jsonPath("$.status").value(409));
    }

    @Test
    void unreadableJsonAnUnknownPathAndAWrongMethodAreSaidInThreeParts() throws Exception {
        mvc.perform(post("/api/v1/refusing")
                        .contentType(MediaType.APPLICATION_JSON)
                        .content("{\"a\":"))
                .andExpect(status().isBadRequest())
                .andExpect(jsonPath("$.instead").isNotEmpty());
        mvc.perform(get("/api/v1/nowhere"))
                .andExpect(status().isNotFound())
                .andExpect(jsonPath("$.detail").value("Nothing here is called /api/v1/nowhere."));
        mvc.perform(get("/api/v1/refusing"))
                .andExpect(status().isMethodNotAllowed())
                .andExpect(header().string(HttpHeaders.ALLOW, "POST"));
        String html = body(mvc.perform(get("/nowhere").accept(MediaType.TEXT_HTML))
                .andExpect(status().isNotFound())
                .andReturn());
        assertThat(html).contains("There is no such sheet.").contains("<h1").contains("aria-label=\"Sheets\"");
    }

    @Test
    void bytesThatAreNoTextAreAWrongRequestAndNoIncident() throws Exception {
        mvc.perform(get("/refusing/bytes").accept(MediaType.APPLICATION_JSON))
                .andExpect(status().isBadRequest())
                .andExpect(jsonPath("$.detail").value(org.hamcrest.Matchers.containsString("no text in UTF-8")))
                .andExpect(jsonPath("$.title").value("Nothing was opened."))
                .andExpect(jsonPath("$.instead").isNotEmpty());
    }

    @Test
    void aFigureThatCouldMeanTwoNumbersIsRefusedWithItsReason() throws Exception {
        mvc.perform(get("/refusing/figure").param("wall", "1.234,5").accept(MediaType.APPLICATION_JSON))
                .andExpect(status().is(422))
                .andExpect(jsonPath("$.field").value("wall"))
                .andExpect(jsonPath("$.detail").value(org.hamcrest.Matchers.containsString("two ways")));
        mvc.perform(get("/refusing/figure").param("wall", "1e5").accept(MediaType.APPLICATION_JSON))
                .andExpect(status().is(422));
        mvc.perform(get("/refusing/figure").param("wall", "\u22120,30").accept(MediaType.TEXT_PLAIN))
                .andExpect(content().string("-0.30 null"));
        mvc.perform(get("/refusing/figure")
                        .param("wall", "1")
                        .param("from", "18/3")
                        .accept(MediaType.APPLICATION_JSON))
                .andExpect(status().is(422))
                .andExpect(jsonPath("$.field").value("from"));
    }

    @Test
    void whoeverWasSlowerIsToldSo() throws Exception {
        mvc.perform(get("/refusing/stale").accept(MediaType.APPLICATION_JSON))
                .andExpect(status().isConflict())
                .andExpect(jsonPath("$.type").value("urn:trammel:refusal:stale"));
    }

    @Test
    void aBrokenConstraintIsSaidInTheShopsWords() throws Exception {
        mvc.perform(get("/refusing/constraint").accept(MediaType.APPLICATION_JSON))
                .andExpect(status().is(422))
                .andExpect(jsonPath("$.field").value("name"))
                .andExpect(jsonPath("$.title").value("The sample was not kept."));
    }

    @Test
    void whatNobodyForesawIsAnIncidentWithANumberAndWithoutAStackTrace() throws Exception {
        String html = body(mvc.perform(get("/refusing/fault").accept(MediaType.TEXT_HTML))
                .andExpect(status().isInternalServerError())
                .andReturn());
        assertThat(html)
                .containsPattern("Incident [0-9a-f]{8}\\.")
                .doesNotContain("IllegalStateException", "Exception", "of the shelf", "org.trammel");
    }

    private static String body(MvcResult result) throws Exception {
        return result.getResponse().getContentAsString();
    }

    @TestComponent
    @Controller
    static class Refusing {

        @PostMapping("/refusing/form")
        String form() {
            throw Refusal.input(
                    "name", "The person was not added.", "Another person has this name.", "Choose another.");
        }

        @PostMapping("/refusing/ask")
        String ask() {
            throw Refusal.ask(
                    "value", "The reading was not recorded.", "It lies far outside.", "Confirm it if it is right.");
        }

        @PostMapping("/api/v1/refusing")
        @ResponseBody
        String api(@RequestBody java.util.Map<String, String> body) {
            throw Refusal.state("The step was not ticked.", "The frame is on hold.", "Call the QA lead.");
        }

        /** What the server throws when it is asked for a parameter such as q=%ff%fe. */
        @GetMapping("/refusing/bytes")
        String bytes() {
            throw new InvalidParameterException(new MalformedInputException(1));
        }

        @GetMapping("/refusing/figure")
        @ResponseBody
        String figure(@RequestParam BigDecimal wall, @RequestParam(required = false) LocalDate from) {
            return wall + " " + from;
        }

        @GetMapping("/refusing/stale")
        String stale() {
            throw new OptimisticLockingFailureException("row was updated");
        }

        @GetMapping("/refusing/constraint")
        String constraint() {
            throw new DataIntegrityViolationException(
                    "could not execute",
                    new IllegalArgumentException(
                            "Unique index violation: \"PUBLIC.SAMPLE_NAME_KEY_INDEX_4 ON PUBLIC.SAMPLE(NAME)\""));
        }

        @GetMapping("/refusing/fault")
        String fault() {
            throw new IllegalStateException("of the shelf");
        }
    }
}
