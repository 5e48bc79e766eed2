package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MvcResult;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.trammel.shop.Statements;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;

class DesignPagesTest extends AtTheDrawingDesk {

    @Autowired
    private Statements statements;

    private RequestPostProcessor owner;

    @BeforeEach
    void sitDown() {
        owner = Signed.on(crew.byId(frame.owner));
    }

    @Test
    void aDraftIsTypedDrawnSentApprovedAndSignedByItsForms() throws Exception {
        long id = frame.begin();
        mvc.perform(form(id, "/edit")
                        .param("description", "Hardtail 29 <b>trail</b>")
                        .param("metal", "AL6061")
                        .param("kind", "HARDTAIL")
                        .param("route", Long.toString(frame.route))
                        .param("testFamily", "HT-AL-A")
                        .param("components", "fork: 541 mm, offset 44\n\nheadset: lower stack 12")
                        .param("geometry.HEAD_ANGLE", " 65,5\u00a0")
                        .param("geometry.SHELL_DROP", "\u221220")
                        .param("geometry.REACH", "458"))
                .andExpect(redirectedUrl("/designs/" + id));
        assertThat(designs.revision(id).geometry())
                .containsExactlyInAnyOrderEntriesOf(Map.of("HEAD_ANGLE", "65.5", "SHELL_DROP", "-20", "REACH", "458"));
        assertThat(page(id, "")).contains("Hardtail 29 &lt;b&gt;trail&lt;/b&gt;", "65,5°", "offset 44");

        mvc.perform(form(id, "/characteristics").param("nominal.080-7", "65,5").param("paste", "080-2;0;-0,5;0,5"))
                .andExpect(redirectedUrl("/designs/" + id + "/characteristics"));
        assertThat(page(id, "/characteristics")).contains("65,2°", "65,8°", "none without a nominal");

        mvc.perform(multipart("/designs/{id}/drawing", id)
                        .file(new MockMultipartFile("file", "frame.pdf", "application/pdf", DrawnFrame.PDF))
                        .param("actId", UUID.randomUUID().toString())
                        .with(csrf())
                        .with(owner))
                .andExpect(redirectedUrl("/designs/" + id));
        office.draw(hands.act(frame.owner), id, DrawnFrame.PDF, "application/pdf", "the same under another name.pdf");
        assertThat(page(id, "")).contains("the same under another name.pdf");
        mvc.perform(get("/designs/{id}/drawing", id).with(owner))
                .andExpect(content().bytes(DrawnFrame.PDF))
                .andExpect(header().string("Content-Disposition", containsString("another")))
                .andExpect(header().string("X-Content-Type-Options", "nosniff"));

        mvc.perform(form(id, "/sending")).andExpect(redirectedUrl("/designs/" + id + "/approval"));
        mvc.perform(form(id, "/approval")
                        .param("file", DrawnFrame.FILE)
                        .param("letter", "a")
                        .param("approver", "Rider One")
                        .param("on", "2026-03-18"))
                .andExpect(redirectedUrl("/designs/" + id));
        frame.answerAll(id);
        frame.givePin(frame.owner);
        frame.givePin(frame.qa);
        mvc.perform(form(id, "/signature")
                        .param("signer", frame.owner + ":OWNER")
                        .param("pin", DrawnFrame.PIN))
                .andExpect(redirectedUrl("/designs/" + id));
        mvc.perform(form(id, "/signature")
                        .param("signer", frame.qa + ":QA_LEAD")
                        .param("pin", DrawnFrame.PIN))
                .andExpect(redirectedUrl("/designs/" + id));
        assertThat(page(id, ""))
                .contains("Ready for the shop", "every check answered", "recording takes both signatures back");

        MvcResult again = mvc.perform(form(id, "/check")
                        .param("check", "TOE_CLEARANCE")
                        .param("answer", "DECIDED")
                        .param("check.TOE_CLEARANCE", "a fixed fork"))
                .andExpect(redirectedUrl("/designs/" + id))
                .andReturn();
        String told = mvc.perform(get("/designs/{id}", id).with(owner).flashAttrs(again.getFlashMap()))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(told).contains("Both signatures of the gate were taken back").doesNotContain("Ready for the shop");
    }

    @Test
    void whatEveryCheckWaitsForIsSaidOnce() throws Exception {
        long id = frame.begin();
        office.change(hands.act(frame.owner), id, null, frame.draft(TrailFrame.inputs("HEAD_ANGLE - SEAT_ANGLE -")));
        assertThat(page(id, "").split("Head angle is not given", -1)).hasSize(2);
        assertThat(page(id, "")).contains("Not computed: what is named above is not given.");
    }

    @Test
    void theNextRevisionsReasonIsNotTheWithdrawals() throws Exception {
        long id = frame.sent();
        MvcResult refused = mvc.perform(
                        form(id, "/next").param("nextReason", " ").header("Referer", "http://localhost/designs/" + id))
                .andReturn();
        assertThat(((org.trammel.shop.web.Shown) refused.getFlashMap().get("refusal")).field())
                .isEqualTo("nextReason");
    }

    @Test
    void aNominalTheRouteFixesIsRefusedByPasteAndApiAndOwnLimitsAreShownAtTheGate() throws Exception {
        long id = frame.draft();
        mvc.perform(form(id, "/characteristics").param("paste", "080-2;5"))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("The route fixes 080-2")));
        mvc.perform(post("/api/v1/designs/{id}/nominals", id)
                        .header("Act-Id", UUID.randomUUID())
                        .contentType("application/json")
                        .content(
                                "{\"given\": {\"080-2\": {\"nominal\": 3, \"lowerDeviation\": -9, \"upperDeviation\": 9}}}")
                        .with(csrf())
                        .with(owner))
                .andExpect(status().is(422))
                .andExpect(content().string(containsString("The route fixes 080-2")));
        assertThat(designs.revision(id).nominals()).containsOnlyKeys("080-7");
        assertThat(page(id, "")).doesNotContain("Other limits than the route");

        mvc.perform(form(id, "/characteristics").param("paste", "080-2;0;-0,5;0,5"));
        assertThat(page(id, "")).contains("Other limits than the route", "\u22120,5", "to 0,5", "\u22120,3", "to 0,3");
    }

    @Test
    void everyFieldAtFaultIsNamedAndNothingTypedIsLost() throws Exception {
        long id = frame.draft();
        MvcResult refused = mvc.perform(form(id, "/characteristics")
                        .param("nominal.080-7", "1.234,5")
                        .param("lower.080-7", "minus")
                        .param("paste", "080-2;1;2;3;4"))
                .andReturn();
        assertThat(refused.getFlashMap().get("wrongs").toString())
                .contains("nominal.080-7", "lower.080-7", "Line 1 has 5 columns");
        String shown = mvc.perform(
                        get("/designs/{id}/characteristics", id).with(owner).flashAttrs(refused.getFlashMap()))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(shown)
                .contains("value=\"1.234,5\"", "080-2;1;2;3;4", "can be read two ways", "aria-invalid=\"true\"");
        assertThat(designs.revision(id).nominals()).containsOnlyKeys("080-7");
    }

    @Test
    void anUnusualNumberIsAskedAboutOnThePageItCameFrom() throws Exception {
        long id = frame.begin();
        MockHttpServletRequestBuilder typed = form(id, "/edit")
                .param("description", "Hardtail")
                .param("metal", "AL6061")
                .param("kind", "HARDTAIL")
                .param("geometry.HEAD_ANGLE", "58")
                .header("Referer", "http://localhost/designs/" + id + "/edit");
        MvcResult asked = mvc.perform(typed)
                .andExpect(redirectedUrl("/designs/" + id + "/edit"))
                .andReturn();
        String shown = mvc.perform(get("/designs/{id}/edit", id).with(owner).flashAttrs(asked.getFlashMap()))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(shown).contains("Head angle 58° is unusual", "value=\"58\"", "name=\"confirm\" value=\"true\"");
        mvc.perform(form(id, "/edit")
                        .param("description", "Hardtail")
                        .param("metal", "AL6061")
                        .param("kind", "HARDTAIL")
                        .param("geometry.HEAD_ANGLE", "58")
                        .param("confirm", "true"))
                .andExpect(redirectedUrl("/designs/" + id));
    }

    @Test
    void aFileThatIsNoDrawingIsRefused() throws Exception {
        long id = frame.begin();
        mvc.perform(multipart("/designs/{id}/drawing", id)
                        .file(new MockMultipartFile("file", "a.txt", "text/plain", "no drawing".getBytes()))
                        .param("actId", UUID.randomUUID().toString())
                        .with(csrf())
                        .with(owner))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("A drawing is a PDF or a picture")));
        assertThat(designs.revision(id).drawing()).isNull();
    }

    @Test
    void theAuditorSeesTheGateButNotWhoApproved() throws Exception {
        long id = frame.approved();
        RequestPostProcessor auditor = Signed.on(crew.byId(hands.hire(Role.AUDITOR)));
        for (String sheet : List.of("", "/approval", "/characteristics")) {
            mvc.perform(get("/designs/" + id + sheet).with(auditor))
                    .andExpect(status().isOk())
                    .andExpect(content().string(org.hamcrest.Matchers.not(containsString("Rider One"))));
        }
        assertThat(page(id, "/approval")).contains("Rider One");
    }

    @Test
    void aSheetCostsFewStatementsHoweverManyCharacteristics() throws Exception {
        long id = frame.checked();
        assertThat(statements.during(() -> page(id, ""))).hasSizeLessThanOrEqualTo(20);
        assertThat(statements.during(() -> page(id, "/characteristics"))).hasSizeLessThanOrEqualTo(20);
    }

    private MockHttpServletRequestBuilder form(long id, String path) {
        return post("/designs/" + id + path)
                .param("actId", UUID.randomUUID().toString())
                .with(csrf())
                .with(owner);
    }

    private String page(long id, String sheet) throws Exception {
        return mvc.perform(get("/designs/" + id + sheet).with(owner))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }
}
