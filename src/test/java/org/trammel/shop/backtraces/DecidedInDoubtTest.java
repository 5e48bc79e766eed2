package org.trammel.shop.backtraces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.flash;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.ovens.Run;
import org.trammel.shop.people.Asking;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Roster;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/** A frame that stays as it is although its run is in doubt asks the same people as a concession does. */
class DecidedInDoubtTest extends AfterADrift {

    /** A day on which nobody else's test has named a deputy or noted somebody as away. */
    private static final LocalDate DAY = LocalDate.of(2026, 7, 9);

    private static final String WORDS = "5,4 h of 8 h, on a rack for a museum";

    @Autowired
    private Roster roster;

    @Autowired
    private Crew people;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private MockMvc mvc;

    private final Map<String, Long> named = new HashMap<>();
    private Floor.Frame frame;
    private String doubtfulRun = "";

    @BeforeEach
    void hired() {
        nobodyIsNoted();
        named.put("lead", floor.hire(Role.QA_LEAD));
        named.put("other lead", floor.hire(Role.QA_LEAD));
        named.put("owner", floor.qualified("OVEN", Role.OWNER, Role.HEAT_TREATER));
        named.put("both", floor.qualified("OVEN", Role.QA_LEAD, Role.OWNER));
        named.put("deputy", floor.qualified("OVEN", Role.HEAT_TREATER));
        for (Role role : List.of(
                Role.HEAT_TREATER, Role.WELDER, Role.ALIGNER, Role.STATION_WORKER, Role.APPRENTICE, Role.AUDITOR)) {
            named.put(role.name(), floor.hire(role));
        }
    }

    @AfterEach
    void nobodyIsNoted() {
        for (String table : List.of("deputy", "absence")) {
            jdbc.sql("delete from " + table + " where from_on = ?").param(DAY).update();
        }
    }

    /** A run that somebody had this part in, and its frame in doubt on the day. */
    private OvenTrace doubtful(String who, String part) {
        long person = named.get(who);
        switch (part) {
            case "loads" -> heat = person;
            case "signs" -> second = person;
            case "stops" -> stops = person;
            case "releases" -> qa = person;
            default -> assertThat(part).isEmpty();
        }
        frame = frame();
        Run run = finished(0, frame);
        doubtfulRun = run.code();
        release.decide(crew.act(qa), run.code(), qa, java.util.Set.of(), null);
        clock.pass(Duration.ofDays(2));
        OvenTrace trace = found(oven.load(), "7");
        clock.setTo(Instant.parse("2026-07-09T07:30:00Z"));
        roster.nameDeputy(crew.act(floor.hire(Role.OWNER)), Role.QA_LEAD, named.get("deputy"), DAY, DAY);
        return trace;
    }

    private OvenTrace doubtful() {
        return doubtful("lead", "");
    }

    /** Whoever else could decide, of other tests too, is away that day. */
    private void onlyTheseAreHere(String names) {
        List<Long> here = Arrays.stream(names.split("\\+")).map(named::get).toList();
        jdbc.sql("insert into absence (person_id, from_on, until_on, noted_by)"
                        + " select distinct person_id, cast(:day as date), cast(:day as date), 0 from person_role"
                        + " where role in ('QA_LEAD', 'OWNER') and person_id not in (:here)")
                .param("day", DAY)
                .param("here", here)
                .update();
    }

    /** here: who of the QA leads and owners is in the shop; empty for everybody. */
    @ParameterizedTest(name = "{0} who {1} the run, here {2}: {3}")
    @CsvSource({
        "lead,           '',       '',        waits",
        "owner,          '',       '',        waits",
        "both,           '',       '',        waits",
        "both,           '',       both,      has its result",
        "both,           '',       both+lead, waits",
        "deputy,         '',       '',        refused",
        "deputy,         '',       owner,     waits",
        "HEAT_TREATER,   '',       '',        refused",
        "WELDER,         '',       '',        refused",
        "ALIGNER,        '',       '',        refused",
        "STATION_WORKER, '',       '',        refused",
        "APPRENTICE,     '',       '',        refused",
        "AUDITOR,        '',       '',        refused",
        "lead,           releases, '',        took part",
        "lead,           signs,    '',        took part",
        "owner,          loads,    '',        took part",
        "owner,          signs,    '',        took part",
        "owner,          stops,    '',        took part",
        "both,           releases, both,      took part",
        "deputy,         loads,    owner,     took part",
    })
    void whoPutsItForward(String who, String part, String here, String becomes) {
        OvenTrace trace = doubtful(who, part);
        if (!here.isEmpty()) {
            onlyTheseAreHere(here);
        }
        if (becomes.equals("refused") || becomes.equals("took part")) {
            Refusal refused = refusal(() -> decide(who, trace));
            assertThat(refused.kind()).isEqualTo(Refusal.Kind.PERSON);
            assertThat(refused.why())
                    .contains(becomes.equals("refused") ? "for the QA lead and the" : "took part in run ");
            assertThat(frameOf(trace, frame).decided()).isNull();
            assertThat(floor.sheet(frame).holds()).hasSize(1);
            return;
        }
        boolean settled = decide(who, trace);
        assertThat(settled).isEqualTo(becomes.equals("has its result"));
        assertThat(frameOf(trace, frame).waits()).isEqualTo(!settled);
        assertThat(floor.sheet(frame).holds()).hasSize(settled ? 0 : 1);
        assertThat(frameOf(trace, frame).decided()).isNotNull().satisfies(put -> {
            assertThat(put.number()).isEqualTo(1);
            assertThat(put.words()).isEqualTo(WORDS);
            assertThat(put.agreed()).hasSize(settled ? 2 : 1);
        });
    }

    private boolean decide(String who, OvenTrace trace) {
        return settle(named.get(who), trace, frameOf(trace, frame).id(), TraceResult.DECIDED, WORDS);
    }

    private boolean agree(long by, OvenTrace trace, int number) {
        return results.agree(crew.act(by), trace.id(), frameOf(trace, frame).id(), number);
    }

    @ParameterizedTest(name = "{0}, then {1}: {2}")
    @CsvSource({
        "lead,  owner,        true",
        "owner, lead,         true",
        "owner, both,         true",
        "lead,  lead,         refused",
        "lead,  other lead,   refused",
        "owner, owner,        refused",
        "lead,  deputy,       refused",
        "lead,  HEAT_TREATER, refused",
        "lead,  AUDITOR,      refused",
        "owner, who released, refused",
    })
    void whoAgreesAfterIt(String first, String then, String becomes) {
        OvenTrace trace = doubtful();
        named.put("who released", qa);
        decide(first, trace);
        if (becomes.equals("refused")) {
            assertThat(refusal(() -> agree(named.get(then), trace, 1)).kind()).isEqualTo(Refusal.Kind.PERSON);
            assertThat(floor.sheet(frame).holds()).hasSize(1);
            refused(() -> closing.close(crew.act(qa), trace.id(), "done"), "1 frame has no result yet");
            return;
        }
        assertThat(agree(named.get(then), trace, 1)).isTrue();
        assertThat(floor.sheet(frame).holds()).isEmpty();
        assertThat(frameOf(trace, frame).result()).isEqualTo(TraceResult.DECIDED);
        assertThat(frameOf(trace, frame).resultWords()).isEqualTo(WORDS);
        assertThat(refusal(() -> agree(named.get("both"), trace, 1)).kind()).isEqualTo(Refusal.Kind.STALE);
    }

    @Test
    void nobodyAgreesToAnotherThanTheOneThatWasRead() {
        OvenTrace trace = doubtful();
        refused(() -> agree(named.get("owner"), trace, 1), "No decision was put forward");
        decide("lead", trace);
        decide("other lead", trace);
        assertThat(refusal(() -> agree(named.get("owner"), trace, 1)).kind()).isEqualTo(Refusal.Kind.STALE);
        assertThat(floor.sheet(frame).holds()).hasSize(1);
        assertThat(agree(named.get("owner"), trace, 2)).isTrue();
    }

    @Test
    void theSameActSentTwiceAgreesOnce() {
        OvenTrace trace = doubtful();
        long listed = frameOf(trace, frame).id();
        Act put = crew.act(named.get("lead"));
        TraceSettling said = TraceSettling.of(TraceResult.DECIDED, "stays");
        assertThat(results.settle(put, trace.id(), listed, said)).isFalse();
        assertThat(results.settle(put, trace.id(), listed, said)).isFalse();
        assertThat(frameOf(trace, frame).decided().number()).isEqualTo(1);
        Act agreed = crew.act(named.get("owner"));
        assertThat(results.agree(agreed, trace.id(), listed, 1)).isTrue();
        assertThat(results.agree(agreed, trace.id(), listed, 1)).isTrue();
        assertThat(frameOf(trace, frame).decided().agreed()).hasSize(2);
    }

    @Test
    void whereItChangesWhatWasOrderedTheCustomerAgreesAsWell() throws Exception {
        OvenTrace trace = doubtful();
        long listed = frameOf(trace, frame).id();
        TraceSettling without = new TraceSettling(TraceResult.DECIDED, "stays", true, " ");
        assertThat(refusal(() -> results.settle(crew.act(named.get("lead")), trace.id(), listed, without))
                        .field())
                .isEqualTo("customer");
        results.settle(
                crew.act(named.get("lead")),
                trace.id(),
                listed,
                new TraceSettling(TraceResult.DECIDED, "stays", true, "Rider Six, by letter of 1 July"));
        String page = "/oven-traces/" + trace.id();
        assertThat(asking("owner").page(page))
                .contains("Put forward: stays", "Rider Six, by letter of 1 July", "owner must still agree", "Agree to")
                .doesNotContain(TraceResult.HARDNESS.word());
        assertThat(asking("lead").page(page)).contains(TraceResult.HARDNESS.word());
        assertThat(asking("AUDITOR").page(page))
                .contains("Put forward: stays", "its words are kept from you")
                .doesNotContain("Rider Six", "Agree to");
    }

    @Test
    void theFormAndTheApiPutForwardAndAgree() throws Exception {
        OvenTrace trace = doubtful();
        String frameOfIt = "/frames/" + frameOf(trace, frame).id();
        String page = "/oven-traces/" + trace.id();
        mvc.perform(asking("lead")
                        .form(page + frameOfIt)
                        .param("result", "DECIDED")
                        .param("words", "stays")
                        .param("changesWhatWasOrdered", "true")
                        .param("customer", "Rider Five on the telephone"))
                .andExpect(status().isSeeOther())
                .andExpect(flash().attribute("done", containsString("somebody must still agree")));
        mvc.perform(asking("lead").form(page + frameOfIt + "/agreement").param("number", "1"))
                .andExpect(status().isForbidden());
        String api = "/api/v1" + page;
        mvc.perform(asking("lead").api(api + frameOfIt + "/result", """
                        {"result": "DECIDED", "words": "stays so", "changesWhatWasOrdered": true}"""))
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.field").value("customer"));
        mvc.perform(asking("lead").api(api + frameOfIt + "/result", """
                        {"result": "DECIDED", "words": "stays so"}"""))
                .andExpect(jsonPath("$.waiting").value(1));
        mvc.perform(get(api + "/frames").with(asking("AUDITOR").who()))
                .andExpect(jsonPath("$[0].decided.number").value(2))
                .andExpect(jsonPath("$[0].decided.agreed[0].as").value("QA_LEAD"));
        mvc.perform(asking("owner").api(api + frameOfIt + "/agreement", "{\"number\": 1}"))
                .andExpect(status().isConflict());
        mvc.perform(asking("owner").form(page + frameOfIt + "/agreement").param("number", "2"))
                .andExpect(flash().attribute("done", "The frame has its result."));
        mvc.perform(get(page).with(asking("owner").who()))
                .andExpect(content().string(containsString("decided otherwise: stays so")))
                .andExpect(content().string(not(containsString("must still agree"))));
        assertThat(floor.sheet(frame).holds()).isEmpty();
    }

    @Test
    void thePaperOfItsLoadTellsTheDoubtToo() throws Exception {
        OvenTrace trace = doubtful();
        assertThat(asking("owner").page("/loads/" + doubtfulRun + "/paper")).contains(trace.number() + ": in doubt: ");
    }

    private Asking asking(String who) {
        return new Asking(mvc, Signed.on(people.byId(named.get(who))));
    }

    private static Refusal refusal(org.assertj.core.api.ThrowableAssert.ThrowingCallable deed) {
        Refusal refused = catchThrowableOfType(Refusal.class, deed);
        assertThat(refused).isNotNull();
        return refused;
    }
}
