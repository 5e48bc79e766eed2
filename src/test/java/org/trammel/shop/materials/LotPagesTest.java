package org.trammel.shop.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.trammel.shop.ShopTest;
import org.trammel.shop.Statements;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;

@ShopTest
class LotPagesTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Lots lots;

    @Autowired
    private LotRegister register;

    @Autowired
    private TestCrew hands;

    @Autowired
    private Crew crew;

    @Autowired
    private Statements statements;

    private RequestPostProcessor signedOn;
    private Rack rack;
    private long qa;

    @BeforeEach
    void hire() {
        qa = hands.hire(Role.QA_LEAD);
        signedOn = Signed.on(crew.byId(qa));
        rack = new Rack(register, hands, qa);
    }

    @Test
    void aLotGoesFromDeliveryToReleaseByItsForms() throws Exception {
        String code = Rack.code();
        mvc.perform(form("/shop/lots")
                        .param("code", code)
                        .param("kind", "TUBE")
                        .param("what", "42 × 1,4")
                        .param("metal", "AL6061")
                        .param("heat", "5K2217")
                        .param("receivedOn", "2026-03-12")
                        .param("quantity", "6000")
                        .param("unit", "mm"))
                .andExpect(redirectedUrl("/shop/lots/" + code));
        assertThat(page("/shop/lots/" + code))
                .contains("missing", "quarantined")
                .doesNotContain("Issue it");
        MockMultipartFile empty = new MockMultipartFile("file", "C-7.pdf", "application/pdf", new byte[0]);
        mvc.perform(multipart("/shop/lots/" + code + "/certificate")
                        .file(empty)
                        .param("certificateType", "3.1")
                        .param("certificate", "C-7")
                        .param("actId", UUID.randomUUID().toString())
                        .accept(MediaType.APPLICATION_JSON)
                        .with(signedOn)
                        .with(csrf()))
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.detail").value("It is empty."));
        MockMultipartFile file = new MockMultipartFile(
                "file", "C-7.txt", "text/plain", "certificate C-7".getBytes(StandardCharsets.UTF_8));
        mvc.perform(multipart("/shop/lots/" + code + "/certificate")
                        .file(file)
                        .param("certificateType", "3.1")
                        .param("certificate", "C-7")
                        .param("actId", UUID.randomUUID().toString())
                        .with(signedOn)
                        .with(csrf()))
                .andExpect(redirectedUrl("/shop/lots/" + code));
        mvc.perform(get("/shop/lots/" + code + "/certificate").with(signedOn))
                .andExpect(content().string("certificate C-7"));
        mvc.perform(form("/shop/lots/" + code + "/release")).andExpect(redirectedUrl("/shop/lots/" + code));
        assertThat(page("/shop/lots/" + code)).contains("released", "Issue it", "6000 of 6000");
    }

    @Test
    void whatWentIntoAFrameIsReadFromBothEndsAndIsNeverMarkup() throws Exception {
        String serial = Rack.serial();
        String code = rack.released(Rack.tube("AL6061"));
        Destination to = new Destination(serial, "FT", "AL6061", null, "020", "<img src=x onerror=alert(1)>");
        long use = lots.issue(hands.act(qa), code, to, null, null, null);
        mvc.perform(form("/frames/" + serial + "/made-of/" + use + "/scrap").param("reason", "<script>=1+1</script>"))
                .andExpect(redirectedUrl("/frames/" + serial + "/made-of"));
        for (String path : new String[] {"/shop/lots/" + code, "/frames/" + serial + "/made-of"}) {
            assertThat(page(path)).contains("scrapped", "&lt;img src=x").doesNotContain("<img src=x", "<script>=");
        }
        assertThat(page("/shop/lots/" + code + "/went-into.csv")).contains(code + "," + serial + ",FT,020,<img");
    }

    @Test
    void theListOfLotsIsTwoStatementsAndASheetAFew() throws Exception {
        String code = rack.released(Rack.tube("AL6061"));
        for (int i = 0; i < 3; i++) {
            lots.issue(hands.act(qa), code, Rack.frame(Rack.serial(), "AL6061"), null, null, null);
        }
        assertThat(statements.during(() -> page("/shop/lots"))).hasSizeLessThanOrEqualTo(2);
        assertThat(statements.during(() -> page("/shop/lots?kind=TUBE&state=RELEASED")))
                .hasSizeLessThanOrEqualTo(1);
        assertThat(statements.during(() -> page("/shop/lots/" + code))).hasSizeLessThanOrEqualTo(7);
    }

    @Test
    void theFileOfLotsNeverStartsAFormula() throws Exception {
        NewLot lot = Rack.tube("AL6061");
        String code = rack.received(new NewLot(
                lot.code(),
                lot.kind(),
                "=1+1",
                lot.metal(),
                null,
                "@SUM(A1)",
                "-5K",
                null,
                "+supplier",
                lot.receivedOn(),
                null,
                null,
                ""));
        assertThat(page("/shop/lots.csv").lines().filter(line -> line.startsWith(code + ",")))
                .singleElement()
                .satisfies(line -> assertThat(line).contains(",'=1+1,", ",'@SUM(A1),", ",'-5K,", ",'+supplier,"));
    }

    @Test
    void theTableOfFitsShowsItsSourcesAndTakesNoSteelForAluminium() throws Exception {
        assertThat(page("/shop/fits")).contains("ISO 18273", "aluminium 6061", "Allow it");
        mvc.perform(api("/api/v1/material-fits", """
                        {"materialClass": "ER80S", "metal": "AL6061", "afterWeld": "ANY", "source": "somebody"}"""))
                .andExpect(status().is(422))
                .andExpect(jsonPath("$.detail").value(org.hamcrest.Matchers.containsString("scrap")));
    }

    @Test
    void theApiTracesAndRefusesAsTheSheetsDo() throws Exception {
        String code = Rack.code();
        mvc.perform(api("/api/v1/lots", """
                        {"code": "%s", "kind": "FILLER", "what": "rod", "materialClass": "ER4643", "heat": "H1",
                         "receivedOn": "2026-03-01"}""".formatted(code)))
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.state").value("QUARANTINED"));
        mvc.perform(api("/api/v1/lots/" + code + "/release", ""))
                .andExpect(status().isConflict())
                .andExpect(jsonPath("$.detail").value("It has no certificate."));
        mvc.perform(api("/api/v1/lots/" + code + "/certificate", "{\"type\": \"3.1\", \"number\": \"C-1\"}"))
                .andExpect(status().isOk());
        mvc.perform(api("/api/v1/lots/" + code + "/release", "")).andExpect(status().isOk());
        mvc.perform(api("/api/v1/lots/" + code + "/issue", "{\"serial\": \"AV26-101-X\", \"position\": \"HT/DT\"}"))
                .andExpect(status().is(422))
                .andExpect(jsonPath("$.field").value("serial"));
        String serial = Rack.serial();
        mvc.perform(api("/api/v1/lots/" + code + "/issue", "{\"serial\": \"" + serial + "\", \"position\": \"HT/DT\"}"))
                .andExpect(status().isNotFound());
        lots.issue(hands.act(qa), code, new Destination(serial, "", "AL6061", "TIG", "070", "HT/DT"), null, null, null);
        mvc.perform(get("/api/v1/frames/" + serial + "/made-of").with(signedOn))
                .andExpect(jsonPath("$[0].lot").value(code));
        mvc.perform(api("/api/v1/lots/" + code + "/block", "{\"reason\": \"maker's letter\"}"))
                .andExpect(jsonPath("$.state").value("BLOCKED"));
        mvc.perform(get("/api/v1/lots/" + code + "/went-into").with(signedOn))
                .andExpect(jsonPath("$[0].serial").value(serial));
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

    private MockHttpServletRequestBuilder api(String path, String body) {
        return post(path)
                .with(signedOn)
                .with(csrf())
                .header("Act-Id", UUID.randomUUID().toString())
                .contentType(MediaType.APPLICATION_JSON)
                .content(body);
    }
}
