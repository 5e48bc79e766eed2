package org.trammel.shop.drift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.Travellers;

/** Charts that follow a welder or a tube set, readings struck out, and all of it for programs. */
class FollowedTest extends WatchedJigs {

    @Autowired
    private Travellers travellers;

    @Test
    void aWelderAndATubeSetGatherTheirReadingsFromEveryJig() {
        long welder = hands.hire(Role.WELDER);
        String initials = crew.byId(welder).initials();
        takeOver(
                watch(one),
                read("2026-01-05", "a", "0.2", initials, "LOT-1"),
                read("2026-01-07", "b", "0.3", "others", "LOT-1"));
        takeOver(watch(two), read("2026-01-06", "c", "0.4", initials, "LOT-2"));
        Series byWelder = book.watch(
                hands.act(qa),
                new NewSeries(Factor.WELDER, initials.toLowerCase(java.util.Locale.ROOT), code, "axle", "mm", false));
        Series byTubes = book.watch(hands.act(qa), new NewSeries(Factor.TUBE_SET, "LOT-1", code, "axle", "mm", false));
        assertThat(charts.of(byWelder.id()).values()).containsExactly(0.2, 0.4);
        assertThat(charts.of(byTubes.id()).values()).containsExactly(0.2, 0.3);
        Refusal twice = refusal(
                () -> book.watch(hands.act(qa), new NewSeries(Factor.TUBE_SET, "LOT-1", code, "again", "mm", true)));
        assertThat(twice.field()).isEqualTo("code");
        assertThat(refusal(() -> book.watch(
                                hands.act(qa), new NewSeries(Factor.WELDER, "NOBODY", code, "axle", "mm", false)))
                        .field())
                .isEqualTo("welder");
        assertThat(refusal(() -> takeOver(byTubes, read("2026-01-05", "a", "0.2", null, null)))
                        .kind())
                .isEqualTo(Refusal.Kind.STATE);
        assertThat(refusal(() -> book.base(hands.act(qa), byTubes.id(), DriftOfJigTest.given(null, true)))
                        .field())
                .isEqualTo("stopsJig");
    }

    @Test
    void aWeldersDriftCallsWithoutANameAndStandsThereWithoutOne() throws Exception {
        long welder = hands.hire(Role.WELDER);
        String initials = crew.byId(welder).initials();
        Series series =
                book.watch(hands.act(qa), new NewSeries(Factor.WELDER, initials, code, "axle of " + code, "mm", false));
        book.base(hands.act(qa), series.id(), DriftOfJigTest.given(null, false));
        long before = calls();
        takeOver(watch(one), read("2026-01-05", "a", "2.0", initials, null));
        assertThat(calls()).isEqualTo(before + 1);
        assertThat(page("/qa/drift/" + series.id(), qa)).contains("Welder " + initials);
        assertThat(page("/qa/drift/" + series.id(), owner))
                .doesNotContain("elder " + initials)
                .contains("A welder, " + code);
        assertThat(page("/qa/drift", owner))
                .doesNotContain("welder " + initials)
                .contains("a welder");
        mvc.perform(get("/api/v1/drift/" + series.id()).with(Signed.on(crew.byId(owner))))
                .andExpect(jsonPath("$.series.of").doesNotExist())
                .andExpect(jsonPath("$.series.stand").value("DRIFTS"));
    }

    private long calls() {
        return travellers.openCalls().stream()
                .map(Travellers.CallLine::words)
                .filter(words -> words.startsWith("QA lead: look at the drift chart of a welder"))
                .filter(words -> words.contains(code))
                .count();
    }

    @Test
    void aReadingStruckOutCountsNoMoreAndStaysOnRecordWithItsReason() throws Exception {
        Series series = watch(one);
        takeOver(
                series,
                read("2026-01-05", "a", "0.2", null, null),
                read("2026-01-06", "misread one", "5.0", null, null),
                read("2026-01-07", "c", "0.3", null, null));
        long wrong = charts.of(series.id()).points().get(1).historyId();
        mvc.perform(post("/qa/drift/" + series.id() + "/earlier/" + wrong + "/strike-out")
                        .with(csrf())
                        .with(Signed.on(crew.byId(qa)))
                        .param("actId", UUID.randomUUID().toString())
                        .param("reason", "half a digit <b>slipped</b>"))
                .andExpect(redirectedUrl("/qa/drift/" + series.id()));
        assertThat(charts.of(series.id()).values()).containsExactly(0.2, 0.3);
        assertThat(page("/qa/drift/" + series.id(), qa))
                .contains("Struck out", "misread one", "half a digit &lt;b&gt;slipped");
        assertThat(refusal(() -> book.strike(hands.act(qa), series.id(), wrong, "again"))
                        .kind())
                .isEqualTo(Refusal.Kind.STATE);
        Series other = watch(two);
        assertThat(refusal(() -> book.strike(hands.act(qa), other.id(), wrong, "elsewhere"))
                        .kind())
                .isEqualTo(Refusal.Kind.MISSING);
        long right = charts.of(series.id()).points().get(0).historyId();
        assertThat(refusal(() -> book.strike(hands.act(owner), series.id(), right, "not mine"))
                        .kind())
                .isEqualTo(Refusal.Kind.PERSON);
        assertThat(refusal(() -> book.strike(hands.act(qa), series.id(), right, " "))
                        .field())
                .isEqualTo("reason");
    }

    @Test
    void programsWatchTakeABaseTakeOverAndStrikeOut() throws Exception {
        String watched = sent(
                "/api/v1/drift",
                "{\"of\": \"" + one + "\", \"code\": \"" + code + "\", \"name\": \"axle\", \"unit\": \"mm\"}",
                201);
        long id = charts.of(code).get(0).id();
        assertThat(watched).contains("\"id\":" + id).contains("EMPTY");
        sent(
                "/api/v1/drift/" + id + "/earlier",
                "{\"readings\": [{\"readOn\": \"2026-01-05\", \"frame\": \"a\", \"value\": 0.9, \"nominal\": 0,"
                        + " \"lowerLimit\": -1, \"upperLimit\": 1}], \"source\": \"notebook\"}",
                200);
        sent(
                "/api/v1/drift/" + id + "/bases",
                "{\"kind\": \"GIVEN\", \"centre\": 0, \"sigma\": 0.2, \"source\": \"trial\", \"reason\": \"begin\"}",
                200);
        mvc.perform(get("/api/v1/drift/" + id).with(Signed.on(crew.byId(qa))))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.series.driftsSince").value(1))
                .andExpect(jsonPath("$.base.centre").value(0))
                .andExpect(jsonPath("$.charts.length()").value(3))
                .andExpect(jsonPath("$.readings[0].shown").value(0.9));
        long reading = charts.of(id).points().get(0).historyId();
        sent("/api/v1/drift/" + id + "/earlier/" + reading + "/strike-out", "{\"reason\": \"misread\"}", 200);
        mvc.perform(get("/api/v1/drift/" + id).with(Signed.on(crew.byId(qa))))
                .andExpect(jsonPath("$.readings.length()").value(0))
                .andExpect(jsonPath("$.struckOut[0].reason").value("misread"));
        mvc.perform(get("/api/v1/drift").with(Signed.on(crew.byId(qa)))).andExpect(status().isOk());
    }

    private String sent(String address, String body, int status) throws Exception {
        return mvc.perform(post(address)
                        .with(csrf())
                        .with(Signed.on(crew.byId(qa)))
                        .header("Act-Id", UUID.randomUUID().toString())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content(body))
                .andExpect(status().is(status))
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    private String page(String address, long who) throws Exception {
        return mvc.perform(get(address).with(Signed.on(crew.byId(who))))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    private static Refusal refusal(org.assertj.core.api.ThrowableAssert.ThrowingCallable deed) {
        List<Refusal> refused = new java.util.ArrayList<>();
        assertThatThrownBy(deed).isInstanceOfSatisfying(Refusal.class, refused::add);
        return refused.get(0);
    }
}
