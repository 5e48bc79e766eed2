package org.trammel.shop.routes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.trammel.shop.ShopTest;
import org.trammel.shop.Statements;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;

@ShopTest
class RoutePagesTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private RouteShop shop;

    @Autowired
    private RouteBook book;

    @Autowired
    private RouteDrafts drafts;

    @Autowired
    private Crew crew;

    @Autowired
    private TestCrew hiring;

    @Autowired
    private Statements statements;

    private Person qa;

    @BeforeEach
    void hire() {
        qa = crew.byId(shop.qaLead());
    }

    private MockHttpServletRequestBuilder form(String path, String code) {
        return post(path, code)
                .with(Signed.on(qa))
                .with(csrf())
                .param("actId", UUID.randomUUID().toString())
                .param("version", String.valueOf(drafts.draft(code).version()));
    }

    @Test
    void theListShowsEveryRouteAndOnlyTheQaLeadMayLayOneOut() throws Exception {
        mvc.perform(get("/routes").with(Signed.on(qa)))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("HT-6061")))
                .andExpect(content().string(containsString("Lay out the route")));
        Person welder = crew.byId(hiring.hire(Role.WELDER));
        mvc.perform(get("/routes").with(Signed.on(welder)))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("Lay out the route"))));
    }

    @ParameterizedTest
    @CsvSource({
        "'', ''",
        "operation, ''",
        "new-operation, ''",
        "split-operation, ''",
        "step, 1",
        "new-step, ''",
        "split-step, 2",
        "characteristic, 080-1",
        "new-characteristic, ''",
        "clock, COLD-SET",
        "new-clock, ''",
        "new-part, ''",
        "step, 99",
        "characteristic, nothing",
        "nonsense, x"
    })
    void everyFormOfTheEditorOpensForTheQaLeadOnly(String edit, String item) throws Exception {
        String code = shop.copyOf("HT-6061", qa.id());
        String opened = edit.isEmpty() || edit.equals("nonsense") || item.equals("99") || item.equals("nothing")
                ? "class=\"blk op\""
                : "blk form opened";
        mvc.perform(get("/routes/{code}", code)
                        .param("op", "080")
                        .param("edit", edit)
                        .param("item", item)
                        .with(Signed.on(qa)))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString(opened)));
        Person owner = crew.byId(hiring.hire(Role.OWNER));
        mvc.perform(get("/routes/{code}", code)
                        .param("op", "080")
                        .param("edit", edit)
                        .param("item", item)
                        .with(Signed.on(owner)))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("blk form opened"))));
    }

    @Test
    void aRevisionThatIsNotThereIsNotFound() throws Exception {
        String code = shop.small(qa.id());
        mvc.perform(get("/routes/{code}", code).param("revision", "A").with(Signed.on(qa)))
                .andExpect(status().isOk());
        mvc.perform(get("/routes/{code}", code).param("revision", "Q").with(Signed.on(qa)))
                .andExpect(status().isNotFound())
                .andExpect(content().string(containsString("no revision Q")));
    }

    @Test
    void theFirstLineGoesNoFurtherUpAndTheLastNoneDown() throws Exception {
        String code = shop.copyOf("HT-6061", qa.id());
        RouteSheet drawn = shop.draft(code);
        String first = drawn.operations().get(0).code();
        String last = drawn.operations().get(drawn.operations().size() - 1).code();
        OperationSheet op = drawn.operations().stream()
                .filter(o -> o.code().equals("080"))
                .findFirst()
                .orElseThrow();
        String page = mvc.perform(get("/routes/{code}", code).param("op", "080").with(Signed.on(qa)))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(page)
                .contains("Move down operation " + first + "\"", "Move up operation " + last + "\"")
                .doesNotContain("Move up operation " + first + "\"", "Move down operation " + last + "\"");
        int steps = op.steps().size();
        assertThat(page)
                .contains("Move down step 1\"", "Move up step " + steps + "\"")
                .doesNotContain("Move up step 1\"", "Move down step " + steps + "\"");
        String measured = op.characteristics().get(0).code();
        assertThat(page)
                .contains("Move down characteristic " + measured + "\"")
                .doesNotContain("Move up characteristic " + measured + "\"");
    }

    @Test
    void formsChangeTheDraftStepByStepUpToItsRelease() throws Exception {
        String code = shop.small(qa.id());
        mvc.perform(form("/routes/{code}/draft/operation", code)
                        .param("after", "030")
                        .param("code", "060")
                        .param("name", "Tack")
                        .param("station", "3")
                        .param("point", "HOLD")
                        .param("signers", "WORKER", "SECOND")
                        .param("irreversible", "true")
                        .param("repeatLimit", "2")
                        .param("caution", "Hot."))
                .andExpect(redirectedUrl("/routes/" + code + "?op=060"));
        mvc.perform(form("/routes/{code}/draft/step", code)
                        .param("op", "060")
                        .param("text", "Tack it <all>")
                        .param("photo", "true"))
                .andExpect(status().is3xxRedirection());
        mvc.perform(form("/routes/{code}/draft/characteristic", code)
                        .param("op", "060")
                        .param("code", "060-1")
                        .param("name", "Gap")
                        .param("unit", "mm")
                        .param("decimals", "2")
                        .param("nominal", "0")
                        .param("upperDeviation", "0,15")
                        .param("gaugeKind", "FEELER")
                        .param("points", "left\r\nright")
                        .param("reduction", "GREATEST")
                        .param("rule", "PLAIN")
                        .param("signers", "WORKER")
                        .param("deciding", "true")
                        .param("source", "own trial"))
                .andExpect(status().is3xxRedirection());
        mvc.perform(form("/routes/{code}/draft/clock", code)
                        .param("code", "TACK-BY")
                        .param("name", "Cut to tack")
                        .param("kind", "WINDOW")
                        .param("minutes", "480")
                        .param("startedBy", "030")
                        .param("gates", "060, 080")
                        .param("source", "own trial"))
                .andExpect(status().is3xxRedirection());
        RouteSheet drawn = shop.draft(code);
        OperationSheet tack = drawn.operations().get(1);
        assertThat(tack.signers()).containsExactly(Signer.WORKER, Signer.SECOND);
        assertThat(tack.steps().get(0).photo()).isTrue();
        assertThat(tack.characteristics().get(0).upperDeviation()).isEqualByComparingTo("0.15");
        assertThat(tack.characteristics().get(0).points()).containsExactly("left", "right");
        assertThat(drawn.clocks().get(0).gates()).containsExactly("060", "080");
        mvc.perform(get("/routes/{code}", code).param("op", "060").with(Signed.on(qa)))
                .andExpect(content().string(containsString("Tack it &lt;all&gt;")))
                .andExpect(content().string(containsString("every check is met")));
        mvc.perform(form("/routes/{code}/draft/release", code).param("reason", "Fits the shop"))
                .andExpect(redirectedUrl("/routes/" + code));
        assertThat(book.released(code).letter()).isEqualTo("A");
        mvc.perform(get("/routes/{code}", code).with(Signed.on(qa)))
                .andExpect(content().string(containsString("Draw up the next revision")))
                .andExpect(content().string(containsString("Fits the shop")));
    }

    @Test
    void aLimitThatCanBeReadTwoWaysIsRefusedAndNothingChanges() throws Exception {
        String code = shop.small(qa.id());
        long before = drafts.draft(code).version();
        mvc.perform(form("/routes/{code}/draft/characteristic", code)
                        .header("Referer", "http://localhost/routes/" + code)
                        .param("op", "030")
                        .param("code", "030-1")
                        .param("name", "Length")
                        .param("unit", "mm")
                        .param("upperDeviation", "1.234,5")
                        .param("gaugeKind", "TAPE")
                        .param("points", "one")
                        .param("reduction", "SINGLE")
                        .param("rule", "PLAIN"))
                .andExpect(status().is3xxRedirection());
        assertThat(drafts.draft(code).version()).isEqualTo(before);
    }

    @Test
    void aGaugeKindNobodyKnowsIsRefusedInOurWords() throws Exception {
        String code = shop.small(qa.id());
        mvc.perform(post("/api/v1/routes/{code}/draft/changes", code)
                        .with(Signed.on(qa))
                        .with(csrf())
                        .header("Act-Id", UUID.randomUUID().toString())
                        .contentType("application/json")
                        .content("""
                                {"version": %d, "change": {"edit": "add-characteristic", "operation": "030",
                                 "characteristic": {"code": "030-1", "name": "Length", "unit": "mm", "decimals": 1,
                                 "fromDesign": false, "nominal": 0, "upperDeviation": 1, "gaugeKind": "DIVINING-ROD",
                                 "points": ["one"], "reduction": "SINGLE", "rule": "PLAIN", "signers": ["WORKER"],
                                 "sided": false, "readBack": false, "secondPerson": false, "deciding": true,
                                 "coldSetAttempts": 0, "source": "own"}}}
                                """.formatted(drafts.draft(code).version())))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("no gauge kind of this code")));
        assertThat(shop.draft(code).operations().get(0).characteristics()).isEmpty();
    }

    @Test
    void programsDoTheSameWithTheSameChecks() throws Exception {
        String code = shop.small(qa.id());
        String change = """
                {"actId": "%s", "version": %d,
                 "change": {"edit": "split-step", "operation": "030", "number": 1, "first": "Saw", "second": "Deburr"}}
                """.formatted(UUID.randomUUID(), drafts.draft(code).version());
        Person welder = crew.byId(hiring.hire(Role.WELDER));
        mvc.perform(post("/api/v1/routes/{code}/draft/changes", code)
                        .with(Signed.on(welder))
                        .with(csrf())
                        .contentType("application/json")
                        .content(change))
                .andExpect(status().isForbidden())
                .andExpect(content().contentType("application/problem+json"));
        mvc.perform(post("/api/v1/routes/{code}/draft/changes", code)
                        .with(Signed.on(qa))
                        .with(csrf())
                        .contentType("application/json")
                        .content(change))
                .andExpect(status().isOk());
        assertThat(shop.draft(code).operations().get(0).steps())
                .extracting(StepSheet::text)
                .containsExactly("Saw", "Deburr");
        for (String path : List.of(
                "",
                "/{code}",
                "/{code}/draft",
                "/{code}/draft/changes",
                "/{code}/draft/findings",
                "/{code}/revisions/A")) {
            mvc.perform(get("/api/v1/routes" + path, path.isEmpty() ? new Object[0] : new Object[] {code})
                            .with(Signed.on(welder)))
                    .andExpect(status().isOk());
        }
        mvc.perform(get("/api/v1/routes/{code}/released", code).with(Signed.on(welder)))
                .andExpect(status().isConflict());
        mvc.perform(get("/api/v1/routes/{code}", "NOT-THERE").with(Signed.on(welder)))
                .andExpect(status().isNotFound());
    }

    @Test
    void aSheetOfTheEditorCostsFewStatementsHoweverLongTheRoute() throws Exception {
        String longOne = shop.copyOf("HT-6061", qa.id());
        String shortOne = shop.small(qa.id());
        int many = statements
                .during(() -> mvc.perform(get("/routes/{code}", longOne).with(Signed.on(qa))))
                .size();
        int few = statements
                .during(() -> mvc.perform(get("/routes/{code}", shortOne).with(Signed.on(qa))))
                .size();
        assertThat(many).isLessThanOrEqualTo(few + 2).isLessThanOrEqualTo(45);
    }
}
