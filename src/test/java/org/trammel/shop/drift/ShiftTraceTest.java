package org.trammel.shop.drift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.calc.statistics.Attribution;
import org.trammel.calc.statistics.Attribution.Difference;
import org.trammel.calc.statistics.Attribution.Effect;
import org.trammel.calc.units.Answer;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Refusal;

class ShiftTraceTest extends WatchedJigs {

    private static final String FIRST_WELDER = "QZ7";
    private static final String OTHER_WELDER = "QX8";

    @Autowired
    private ShiftTraces traces;

    /**
     * Two jigs, two welders, two tube sets, each with each once. Expected by hand, as in any balanced table of two levels
     * (R. A. Fisher's factorial arrangement): a difference is mean of four less mean of four; s² what is left over 8 − 4
     * degrees of freedom; the standard error of a difference s √(1/4 + 1/4).
     */
    private void balanced() {
        takeOver(
                watch(one),
                read("2026-01-05", "a", "0.2", FIRST_WELDER, "A"),
                read("2026-01-06", "b", "0.3", FIRST_WELDER, "B"),
                read("2026-01-07", "c", "0.1", OTHER_WELDER, "A"),
                read("2026-01-08", "d", "0.2", OTHER_WELDER, "B"));
        takeOver(
                watch(two),
                read("2026-01-05", "e", "0.9", FIRST_WELDER, "A"),
                read("2026-01-06", "f", "0.8", FIRST_WELDER, "B"),
                read("2026-01-07", "g", "0.7", OTHER_WELDER, "A"),
                read("2026-01-08", "h", "0.8", OTHER_WELDER, "B"));
    }

    private ShiftTraces.Asked asked(Factor... factors) {
        return new ShiftTraces.Asked(code, List.of(factors), null, null, false);
    }

    private ShiftTrace trace(long who, Factor... factors) {
        return traces.of(asked(factors), Welders.seenBy(crew.byId(who)));
    }

    private static Difference largest(ShiftTrace trace, int factor) {
        Attribution found = ((Answer.Determined<Attribution>) trace.found()).value();
        return ((Answer.Determined<Effect>) found.effects().get(factor))
                .value()
                .differences()
                .get(0);
    }

    @Test
    void aBalancedShiftHangsOnTheJigAlone() {
        balanced();
        ShiftTrace trace = trace(qa, Factor.values());
        assertThat(trace.proven()).containsExactly(Factor.JIG);
        assertThat(trace.mixed()).isEmpty();
        assertThat(trace.words()).isEqualTo("The difference hangs on the jig.");
        double s = Math.sqrt(0.015 / 4);
        Difference jig = largest(trace, 0);
        assertThat(jig.higher()).isEqualTo(two);
        assertThat(jig.difference()).isCloseTo(0.60, within(1e-12));
        assertThat(jig.standardError()).isCloseTo(s * Math.sqrt(0.5), within(1e-12));
        assertThat(jig.t()).isCloseTo(0.60 / (s * Math.sqrt(0.5)), within(1e-9));
        assertThat(largest(trace, 1).difference()).isCloseTo(0.10, within(1e-12));
        assertThat(largest(trace, 1).proven()).isFalse();
        assertThat(largest(trace, 2).difference()).isCloseTo(0.05, within(1e-12));
        // t of 4 degrees of freedom at 97.5 %: 2.776 in every printed table.
        assertThat(jig.needed()).isCloseTo(2.776, within(5e-4));
    }

    @Test
    void whereEachWelderUsedOneJigNothingIsSaidOfEither() throws Exception {
        takeOver(
                watch(one),
                read("2026-01-05", "a", "0.2", FIRST_WELDER, "A"),
                read("2026-01-06", "b", "0.3", FIRST_WELDER, "A"),
                read("2026-01-07", "c", "0.1", FIRST_WELDER, "A"));
        takeOver(
                watch(two),
                read("2026-01-05", "e", "0.9", OTHER_WELDER, "A"),
                read("2026-01-06", "f", "0.8", OTHER_WELDER, "A"),
                read("2026-01-07", "g", "0.7", OTHER_WELDER, "A"));
        ShiftTrace trace = trace(qa, Factor.JIG, Factor.WELDER);
        assertThat(trace.proven()).isEmpty();
        assertThat(trace.mixed()).containsExactly(Factor.JIG, Factor.WELDER);
        assertThat(page(qa))
                .contains("Not everything can be told apart")
                .contains("cannot be told from the welder")
                .contains("would separate them");
        assertThat(trace(qa, Factor.JIG).proven())
                .as("without the welder the jig is all there is")
                .containsExactly(Factor.JIG);
    }

    @Test
    void weldersAreNamedToTheQaLeadAndToNobodyElse() throws Exception {
        balanced();
        assertThat(page(qa)).contains(FIRST_WELDER, OTHER_WELDER).contains("proven");
        assertThat(page(owner))
                .doesNotContain(FIRST_WELDER, OTHER_WELDER)
                .contains("number 1")
                .contains("Welders are named to the QA lead only");
        String sent = "/api/v1/drift/causes?code=" + code;
        assertThat(body(sent, qa)).contains(FIRST_WELDER);
        assertThat(body(sent, owner)).doesNotContain(FIRST_WELDER, OTHER_WELDER);
        mvc.perform(get(sent).with(Signed.on(crew.byId(owner))))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.words").value("The difference hangs on the jig."))
                .andExpect(jsonPath("$.factors[0].differences[0].proven").value(true))
                .andExpect(jsonPath("$.readings").value(8));
    }

    @Test
    void whatDoesNotNameAllThatIsComparedIsLeftOutAndCounted() {
        balanced();
        takeOver(charts.of(code).get(0), read("2026-01-09", "i", "0.2", null, "A"));
        assertThat(trace(qa, Factor.values()).left()).isEqualTo(1);
        assertThat(trace(qa, Factor.JIG, Factor.TUBE_SET).left()).isZero();
    }

    @Test
    void aPeriodANothingAndAnUnknownAxisAreAnswered() throws Exception {
        balanced();
        ShiftTrace oneDay = traces.of(
                new ShiftTraces.Asked(
                        code, List.of(Factor.JIG), LocalDate.parse("2026-01-08"), LocalDate.parse("2026-01-08"), false),
                Welders.seenBy(crew.byId(qa)));
        assertThat(oneDay.used()).hasSize(2);
        assertThat(oneDay.words()).isEqualTo("Nothing can be said.");
        assertThatThrownBy(() -> traces.of(asked(), Welders.seenBy(crew.byId(qa))))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.field()).isEqualTo("factors"));
        mvc.perform(get("/api/v1/drift/causes?code=none").with(Signed.on(crew.byId(qa))))
                .andExpect(status().isNotFound());
        mvc.perform(get("/qa/drift/causes?code=" + code + "&from=soon").with(Signed.on(crew.byId(qa))))
                .andExpect(status().is4xxClientError());
    }

    private String page(long who) throws Exception {
        return body("/qa/drift/causes?code=" + code, who);
    }

    private String body(String address, long who) throws Exception {
        return mvc.perform(get(address).with(Signed.on(crew.byId(who))))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }
}
