package org.trammel.shop.drift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.http.MediaType;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Refusal;

/** What people type on a drift chart that is none: a sentence each time, and nothing is kept. */
class DriftBadInputTest extends WatchedJigs {

    private Series series;

    @BeforeEach
    void watched() {
        series = watch(one);
    }

    private static Refusal refusal(ThrowingCallable deed) {
        Refusal refused = catchThrowableOfType(Refusal.class, deed);
        assertThat(refused).isNotNull();
        assertThat(refused.why()).isNotBlank();
        assertThat(refused.instead()).isNotBlank();
        return refused;
    }

    private static NewBase base(Base.Kind kind, @Nullable Integer first, @Nullable String sigma, String weight) {
        return new NewBase(
                kind,
                first,
                null,
                null,
                kind == Base.Kind.GIVEN ? BigDecimal.ZERO : null,
                sigma == null ? null : new BigDecimal(sigma),
                new BigDecimal(weight),
                new BigDecimal("2.7"),
                new BigDecimal("0.5"),
                new BigDecimal("4.77"),
                false,
                "trial",
                "begin",
                null);
    }

    private Refusal taking(NewBase base) {
        Refusal refused = refusal(() -> book.base(hands.act(qa), series.id(), base));
        assertThat(charts.bases(series.id())).isEmpty();
        return refused;
    }

    @Test
    void aBaseWithoutSpreadIsRefused() {
        Refusal given = taking(base(Base.Kind.GIVEN, null, "0", "0.2"));
        assertThat(given.field()).isEqualTo("sigma");
        assertThat(given.why()).contains("is not above 0");
        takeOver(series, daily(List.of("0.2", "0.2", "0.2", "0.2")).toArray(new EarlierReading[0]));
        Refusal read = taking(base(Base.Kind.FIRST, 4, null, "0.2"));
        assertThat(read.field()).isEqualTo("first");
        assertThat(read.why()).contains("All readings of the base are the same");
    }

    @Test
    void aBaseOfFewerReadingsThanAskedForOrOfOneIsRefused() {
        takeOver(series, daily(List.of("0.2", "0.3", "0.1")).toArray(new EarlierReading[0]));
        Refusal more = taking(base(Base.Kind.FIRST, 20, null, "0.2"));
        assertThat(more.why()).contains("made of 20 readings; 3 are there");
        assertThat(taking(base(Base.Kind.FIRST, 1, null, "0.2")).field()).isEqualTo("first");
        NewBase day = new NewBase(
                Base.Kind.PERIOD,
                null,
                LocalDate.parse("2026-01-02"),
                LocalDate.parse("2026-01-02"),
                null,
                null,
                new BigDecimal("0.2"),
                new BigDecimal("2.7"),
                new BigDecimal("0.5"),
                new BigDecimal("4.77"),
                false,
                "trial",
                "begin",
                null);
        assertThat(taking(day).why()).contains("one reading only");
    }

    @Test
    void aBaseOfFewerThanTwentyIsTakenWithItsDoubtBesideIt() throws Exception {
        takeOver(series, daily(List.of("0.2", "0.3", "0.1", "0.4")).toArray(new EarlierReading[0]));
        book.base(hands.act(qa), series.id(), base(Base.Kind.FIRST, 4, null, "0.2"));
        mvc.perform(get("/qa/drift/" + series.id()).with(Signed.on(crew.byId(qa))))
                .andExpect(status().isOk())
                .andExpect(result -> assertThat(result.getResponse().getContentAsString())
                        .contains("The base has 4 readings: limits from fewer than 20 may be far off."));
    }

    @Test
    void digitsThatWouldBeRoundedAwayAreRefused() {
        Refusal weight = taking(base(Base.Kind.GIVEN, null, "0.35", "0.20005"));
        assertThat(weight.field()).isEqualTo("weight");
        assertThat(weight.why()).contains("0.20005 has more digits than are kept: four after the sign");
        assertThat(taking(base(Base.Kind.GIVEN, null, "0.00000000001", "0.2")).field())
                .isEqualTo("sigma");
        Refusal read = refusal(() -> takeOver(series, read("2026-01-05", "a", "0.1234567", null, null)));
        assertThat(read.field()).isEqualTo("lines");
        assertThat(read.why()).contains("Line 1: 0.1234567 has more digits than are kept");
        // what is nothing but noughts is no digit
        book.base(hands.act(qa), series.id(), base(Base.Kind.GIVEN, null, "0.350000000000", "0.20000"));
        assertThat(charts.standing(series.id()).base().weight()).isEqualByComparingTo("0.2");
    }

    @Test
    void inchesForMillimetresAreToldWithTheValueThatWasMeant() {
        EarlierReading width = new EarlierReading(
                LocalDate.parse("2026-01-05"),
                "a",
                new BigDecimal("5.83"),
                new BigDecimal("148"),
                new BigDecimal("148"),
                new BigDecimal("148.5"),
                null,
                null);
        Refusal refused = refusal(() -> takeOver(series, width));
        assertThat(refused.why()).contains("5.83 mm lies outside 148 to 148.5; as inches it would be 148.082 mm");
        assertThat(charts.of(series.id()).points()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-01-05; a; 0.1; 0; -1 | it has 5 entries, not 6 to 8",
                "5.1.; a; 0.1; 0; -1; 1 | Line 1",
                "2026-01-05; a; 0,1,2; 0; -1; 1 | Line 1",
                "2026-01-05; a; 1e-3; 0; -1; 1 | Line 1",
                "2026-01-05; a; NaN; 0; -1; 1 | Line 1",
                "2026-01-05; a; 0.1; 0; 1; -1 | nominal 0 does not lie between 1 and -1",
                "2026-01-05; a; 0.1; 0; 0; 0 | nominal 0 does not lie between 0 and 0",
                "2026-01-05; ; 0.1; 0; -1; 1 | Line 1: the frame",
                "2031-01-05; a; 0.1; 0; -1; 1 | which is still to come"
            })
    void aLineThatCannotBeReadIsToldWithItsNumber(String line, String why) throws Exception {
        String page = mvc.perform(post("/qa/drift/" + series.id() + "/earlier")
                        .with(csrf())
                        .with(Signed.on(crew.byId(qa)))
                        .param("actId", UUID.randomUUID().toString())
                        .param("lines", line)
                        .param("source", "notebook"))
                .andExpect(status().is4xxClientError())
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(page).contains(why);
        assertThat(charts.of(series.id()).points()).isEmpty();
    }

    @Test
    void whatProgramsSendThatIsNoneIsAnsweredInWords() throws Exception {
        for (String body : List.of(
                "{}",
                "{\"readings\": null, \"source\": \"x\"}",
                "{\"readings\": [null], \"source\": \"x\"}",
                "{\"readings\": [{\"readOn\": \"2026-01-05\", \"frame\": \"a\"}], \"source\": \"x\"}",
                "{\"readings\": [{\"readOn\": \"2026-01-05\", \"frame\": \"a\", \"value\": 1e30, \"nominal\": 0,"
                        + " \"lowerLimit\": -1, \"upperLimit\": 1}], \"source\": \"x\"}",
                "{\"readings\": [{\"readOn\": \"2026-01-05\", \"frame\": \"a\", \"value\": 0.1, \"nominal\": 0,"
                        + " \"lowerLimit\": -1, \"upperLimit\": 1}], \"source\": null}")) {
            sent("/earlier", body);
        }
        for (String body : List.of(
                "{}",
                "{\"kind\": \"GIVEN\", \"source\": \"x\", \"reason\": \"y\"}",
                "{\"kind\": \"GIVEN\", \"centre\": 0, \"sigma\": -1, \"source\": \"x\", \"reason\": \"y\"}",
                "{\"kind\": \"GIVEN\", \"centre\": 0, \"sigma\": 1, \"decision\": 0, \"source\": \"x\", \"reason\": \"y\"}",
                "{\"kind\": \"FIRST\", \"first\": 2147483647, \"source\": \"x\", \"reason\": \"y\"}",
                "{\"kind\": \"PERIOD\", \"from\": \"2026-02-01\", \"until\": \"2026-01-01\", \"source\": \"x\","
                        + " \"reason\": \"y\"}")) {
            sent("/bases", body);
        }
        assertThat(charts.of(series.id()).points()).isEmpty();
        assertThat(charts.bases(series.id())).isEmpty();
    }

    private void sent(String verb, String body) throws Exception {
        mvc.perform(post("/api/v1/drift/" + series.id() + verb)
                        .with(csrf())
                        .with(Signed.on(crew.byId(qa)))
                        .header("Act-Id", UUID.randomUUID().toString())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content(body))
                .andExpect(result -> assertThat(result.getResponse().getStatus())
                        .as(body + " " + result.getResponse().getContentAsString())
                        .isBetween(400, 422))
                .andExpect(jsonPath("$.detail").isNotEmpty());
    }
}
