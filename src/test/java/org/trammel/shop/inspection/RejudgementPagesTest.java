package org.trammel.shop.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.Statements;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.gauges.Failure;
import org.trammel.shop.gauges.GaugeRegister;
import org.trammel.shop.people.Asking;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;

/** The sheet of a re-judgement, the QA desk's line, and the API, over 0 ± 0.30 with u 0.020: conforming up to 0.267. */
class RejudgementPagesTest extends AtTheTable {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private GaugeRegister register;

    @Autowired
    private Rejudgements rejudgements;

    @Autowired
    private Crew crew;

    @Autowired
    private Statements statements;

    private Asking asQa;
    private WholeShop.Frame frame;
    private ReadingLine old;
    private RejudgementLine opened;

    @BeforeEach
    void failAGauge() {
        asQa = new Asking(mvc, Signed.on(crew.byId(qa)));
        String gauge = gauge("0.020");
        frame = frame(wanted(Rule.GUARDED, Reduction.SINGLE, "once"));
        old = read(worker, frame, gauge, "-0.20");
        register.fail(
                shop.act(qa),
                gauge,
                new Failure(
                        LocalDate.of(2026, 3, 17),
                        new BigDecimal("0.18"),
                        "°",
                        new BigDecimal("3"),
                        "<script>alert(1)</script>"));
        rejudgements.judgeToTheEnd();
        opened = rejudgements.open().get(rejudgements.open().size() - 1);
    }

    @Test
    void theSheetShowsEachReadingWithItsFiguresAndTheWayToMeasureItAgain() throws Exception {
        String page = asQa.page("/rejudgements/" + opened.id());
        assertThat(page)
                .contains(opened.number(), "read 0,18 ° too high at 3 °", "an error from 0 to 0,18")
                .contains("measure again", "080-1", "\u22120,380 to \u22120,200", "0,033")
                .contains("its verdict may be another within the span")
                .contains("correct=" + old.readingId())
                .contains("1 of 1 waits for a result")
                .doesNotContain("<script>alert");
        assertThat(asQa.page("/rejudgements")).contains(opened.number(), opened.gauge());
    }

    @Test
    void theDeskHasALineWhileItIsOpenAndItsHoldIsLiftedThereOnly() throws Exception {
        assertThat(asQa.page("/qa"))
                .contains("/rejudgements/" + opened.id() + "\"", "1 of 1 frames wait for a result")
                .contains("Its result lifts it: " + opened.number());
        correct(qa, old, gauge("0.020"), "-0.20");
        mvc.perform(asQa.form("/rejudgements/" + opened.id() + "/frames/" + frame.serial())
                        .param("result", "MEASURED_AGAIN")
                        .param("words", "reads 0,20"))
                .andExpect(redirectedUrl("/rejudgements/" + opened.id()));
        mvc.perform(asQa.form("/rejudgements/" + opened.id() + "/closing").param("words", ""))
                .andExpect(redirectedUrl("/rejudgements/" + opened.id()));
        assertThat(asQa.page("/qa"))
                .doesNotContain("/rejudgements/" + opened.id() + "\"")
                .doesNotContain("Its result lifts it: " + opened.number());
        assertThat(asQa.page("/rejudgements/" + opened.id()))
                .contains("measured again: reads 0,20", "read again since");
    }

    @Test
    void aWorkerSeesTheSheetAndIsOfferedNoResult() throws Exception {
        long apprentice = shop.hire(Role.APPRENTICE);
        String page = mvc.perform(get("/rejudgements/" + opened.id()).with(Signed.on(crew.byId(apprentice))))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(page).contains("measure again").doesNotContain("Give the result", "correct=");
    }

    @Test
    void theSheetCostsAFixedNumberOfStatements() throws Exception {
        assertThat(statements.during(() -> asQa.page("/rejudgements/" + opened.id())))
                .hasSizeLessThanOrEqualTo(12);
    }

    @Test
    void theFileHasEveryFigure() throws Exception {
        assertThat(asQa.page("/rejudgements/" + opened.id() + ".csv").lines().skip(1))
                .singleElement()
                .satisfies(line -> assertThat(line)
                        .startsWith(frame.serial() + ",080-1,")
                        .contains(",-0.200000000000,°,-0.380000000000,-0.200000000000,-0.300000,0.300000,")
                        .contains(",conforming,measure again,"));
    }

    @Test
    void theApiDoesTheSameWithTheSameRefusals() throws Exception {
        String at = "/api/v1/rejudgements/" + opened.id();
        mvc.perform(get(at).with(asQa.who()))
                .andExpect(jsonPath("$.number").value(opened.number()))
                .andExpect(jsonPath("$.waiting").value(1));
        mvc.perform(get(at + "/frames").with(asQa.who()))
                .andExpect(jsonPath("$[0].outcome").value("MEASURE_AGAIN"));
        mvc.perform(get(at + "/readings").with(asQa.who()))
                .andExpect(jsonPath("$[0].least").value(-0.38))
                .andExpect(jsonPath("$[0].waits").value(true));
        mvc.perform(asQa.api(at + "/frames/" + frame.serial() + "/result", """
                        {"result": "MEASURED_AGAIN", "words": "reads 0.20"}""")).andExpect(status().isConflict());
        mvc.perform(asQa.api(at + "/close", "{}")).andExpect(status().isConflict());
        mvc.perform(asQa.api(at + "/frames/" + frame.serial() + "/result", """
                        {"result": "DECIDED", "words": "NC-0001", "changesWhatWasOrdered": true}"""))
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.field").value("customer"));
        mvc.perform(asQa.api(at + "/frames/" + frame.serial() + "/result", """
                        {"result": "DECIDED", "words": "NC-0001", "changesWhatWasOrdered": true,
                         "customer": "rider, by letter"}"""))
                .andExpect(jsonPath("$.waiting").value(1));
        mvc.perform(get(at + "/frames").with(asQa.who()))
                .andExpect(jsonPath("$[0].decided.number").value(1))
                .andExpect(jsonPath("$[0].decided.agreed[0].as").value("QA_LEAD"));
        Asking asOwner = new Asking(mvc, Signed.on(crew.byId(shop.hire(Role.OWNER))));
        mvc.perform(asOwner.api(at + "/frames/" + frame.serial() + "/agreement", "{\"number\": 1}"))
                .andExpect(jsonPath("$.waiting").value(0));
        mvc.perform(asQa.api(at + "/close", "{}")).andExpect(jsonPath("$.state").value("CLOSED"));
        mvc.perform(get("/api/v1/rejudgements/999999").with(asQa.who())).andExpect(status().isNotFound());
    }
}
