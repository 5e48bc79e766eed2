package org.trammel.shop.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Asking;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Roster;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/** A frame that stays as it is without being measured again asks the same people as a concession does. */
class DecidedWithoutMeasuringTest extends AfterAFailure {

    /** A day on which nobody else's test has named a deputy or noted somebody as away. */
    private static final LocalDate DAY = LocalDate.of(2026, 7, 2);

    @Autowired
    private Roster roster;

    @Autowired
    private Crew crew;

    @Autowired
    private MockMvc mvc;

    private Map<String, Long> people;
    private String gauge;
    private WholeShop.Frame frame;
    private ReadingLine read;

    @BeforeEach
    void crew() {
        shop.clock().setTo(Instant.parse("2026-07-02T07:30:00Z"));
        long owner = shop.hire(Role.OWNER);
        people = Map.ofEntries(
                Map.entry("lead", qa),
                Map.entry("other lead", shop.hire(Role.QA_LEAD)),
                Map.entry("owner", owner),
                Map.entry("both", shop.hire(Role.QA_LEAD, Role.OWNER)),
                Map.entry("deputy", shop.hire(Role.STATION_WORKER)),
                Map.entry("aligner", shop.hire(Role.ALIGNER)),
                Map.entry("welder", shop.hire(Role.WELDER)),
                Map.entry("heat treater", shop.hire(Role.HEAT_TREATER)),
                Map.entry("worker", worker),
                Map.entry("apprentice", shop.hire(Role.APPRENTICE)),
                Map.entry("auditor", shop.hire(Role.AUDITOR)),
                Map.entry("gone", shop.hire(Role.QA_LEAD)));
        nobodyIsNoted();
        roster.nameDeputy(shop.act(owner), Role.QA_LEAD, people.get("deputy"), DAY, DAY);
        jdbc.sql("update person set left_on = date '2026-06-30' where id = ?")
                .param(people.get("gone"))
                .update();
        gauge = offsetGauge();
        frame = frame(offset());
    }

    @AfterEach
    void nobodyIsNoted() {
        for (String table : List.of("deputy", "absence")) {
            jdbc.sql("delete from " + table + " where from_on = ?").param(DAY).update();
        }
    }

    /** Whoever else could decide, of other tests too, is away that day. */
    private void onlyTheseAreHere(String names) {
        List<Long> here = Arrays.stream(names.split("\\+")).map(people::get).toList();
        jdbc.sql("insert into absence (person_id, from_on, until_on, noted_by)"
                        + " select distinct person_id, cast(:day as date), cast(:day as date), 0 from person_role"
                        + " where role in ('QA_LEAD', 'OWNER') and person_id not in (:here)")
                .param("day", DAY)
                .param("here", here)
                .update();
    }

    private RejudgementLine doubtful(String reader) {
        read = readings.read(shop.act(people.get(reader)), characteristic(frame), input(gauge, true, "-0.80"));
        return failed(gauge, LocalDate.of(2026, 7, 2), "0.18", "°");
    }

    /** here: who of the QA leads and owners is in the shop; empty for everybody. */
    @ParameterizedTest(name = "{0}, read by {1}, here {2}: {3}")
    @CsvSource({
        "lead,         worker, '',           waits",
        "owner,        worker, '',           waits",
        "both,         worker, '',           waits",
        "both,         worker, both,         has its result",
        "both,         worker, both+lead,    waits",
        "deputy,       worker, '',           refused",
        "deputy,       worker, owner,        waits",
        "owner,        lead,   owner,        waits",
        "aligner,      worker, '',           refused",
        "welder,       worker, '',           refused",
        "heat treater, worker, '',           refused",
        "worker,       lead,   '',           refused",
        "apprentice,   worker, '',           refused",
        "auditor,      worker, '',           refused",
        "gone,         worker, '',           refused",
        "lead,         lead,   '',           refused",
        "owner,        owner,  '',           refused",
        "both,         both,   both,         refused",
        "deputy,       deputy, owner,        refused",
    })
    void whoPutsItForward(String who, String reader, String here, String becomes) {
        RejudgementLine done = doubtful(reader);
        if (!here.isEmpty()) {
            onlyTheseAreHere(here);
        }
        if (becomes.equals("refused")) {
            Refusal refused = refusal(() -> decide(who, done));
            assertThat(refused.kind()).isEqualTo(Refusal.Kind.PERSON);
            assertThat(refused.why()).contains(who.equals(reader) ? "took part in what " + gauge : "QA lead and the");
            assertThat(frameOf(done, frame).decided()).isNull();
            return;
        }
        boolean settled = decide(who, done);
        assertThat(settled).isEqualTo(becomes.equals("has its result"));
        assertThat(frameOf(done, frame).waits()).isEqualTo(!settled);
        assertThat(holdsOf(frame, done)).hasSize(settled ? 0 : 1);
        assertThat(frameOf(done, frame).decided()).isNotNull().satisfies(put -> {
            assertThat(put.number()).isEqualTo(1);
            assertThat(put.words()).isEqualTo("0,03 past the limit, on a frame of 9 kg");
            assertThat(put.agreed()).hasSize(settled ? 2 : 1);
        });
    }

    private boolean decide(String who, RejudgementLine done) {
        return settle(people.get(who), done, frame, FrameResult.DECIDED, "0,03 past the limit, on a frame of 9 kg");
    }

    @ParameterizedTest(name = "{0}, then {1}: {2}")
    @CsvSource({
        "lead,  owner,      true",
        "owner, lead,       true",
        "owner, both,       true",
        "lead,  lead,       refused",
        "lead,  other lead, refused",
        "owner, owner,      refused",
        "lead,  deputy,     refused",
        "lead,  welder,     refused",
        "lead,  worker,     refused",
        "lead,  auditor,    refused",
    })
    void whoAgreesAfterIt(String first, String then, String becomes) {
        RejudgementLine done = doubtful("worker");
        decide(first, done);
        if (becomes.equals("refused")) {
            assertThat(refusal(() -> agree(then, done, 1)).kind()).isEqualTo(Refusal.Kind.PERSON);
            assertThat(holdsOf(frame, done)).hasSize(1);
            assertThat(refusal(() -> rejudgements.close(shop.act(qa), done.id(), null))
                            .why())
                    .contains("1 frame has no result yet");
            return;
        }
        assertThat(agree(then, done, 1)).isTrue();
        assertThat(holdsOf(frame, done)).isEmpty();
        assertThat(frameOf(done, frame).result()).isEqualTo(FrameResult.DECIDED);
        assertThat(frameOf(done, frame).resultWords()).isEqualTo("0,03 past the limit, on a frame of 9 kg");
        assertThat(refusal(() -> agree("both", done, 1)).kind()).isEqualTo(Refusal.Kind.STALE);
    }

    private boolean agree(String who, RejudgementLine done, int number) {
        return results.agree(shop.act(people.get(who)), done.id(), frame.serial(), number);
    }

    @Test
    void nobodyAgreesToAnotherThanTheOneThatWasRead() {
        RejudgementLine done = doubtful("worker");
        assertThat(refusal(() -> agree("owner", done, 1)).why()).contains("No decision was put forward");
        decide("lead", done);
        decide("other lead", done);
        assertThat(refusal(() -> agree("owner", done, 1)).kind()).isEqualTo(Refusal.Kind.STALE);
        assertThat(holdsOf(frame, done)).hasSize(1);
        assertThat(agree("owner", done, 2)).isTrue();
    }

    @Test
    void theSameActSentTwiceAgreesOnce() {
        RejudgementLine done = doubtful("worker");
        Act put = shop.act(qa);
        FrameSettling said = FrameSettling.of(FrameResult.DECIDED, "stays");
        assertThat(results.settle(put, done.id(), frame.serial(), said)).isFalse();
        assertThat(results.settle(put, done.id(), frame.serial(), said)).isFalse();
        Act agreed = shop.act(people.get("owner"));
        assertThat(results.agree(agreed, done.id(), frame.serial(), 1)).isTrue();
        assertThat(results.agree(agreed, done.id(), frame.serial(), 1)).isTrue();
        assertThat(frameOf(done, frame).decided().agreed()).hasSize(2);
    }

    @Test
    void whereItChangesWhatWasOrderedTheCustomerAgreesAsWell() throws Exception {
        RejudgementLine done = doubtful("worker");
        FrameSettling without = new FrameSettling(FrameResult.DECIDED, "stays", true, " ");
        assertThat(refusal(() -> results.settle(shop.act(qa), done.id(), frame.serial(), without))
                        .field())
                .isEqualTo("customer");
        results.settle(
                shop.act(qa),
                done.id(),
                frame.serial(),
                new FrameSettling(FrameResult.DECIDED, "stays", true, "Rider One, by letter of 1 July"));
        String page = "/rejudgements/" + done.id();
        assertThat(new Asking(mvc, Signed.on(crew.byId(people.get("owner")))).page(page))
                .contains("Put forward: stays", "Rider One, by letter of 1 July", "owner must still agree", "Agree");
        assertThat(new Asking(mvc, Signed.on(crew.byId(people.get("auditor")))).page(page))
                .contains("Put forward: stays", "its words are kept from you")
                .doesNotContain("Rider One");
    }

    @Test
    void whatIsMeasuredAfterAllNeedsNobodyElse() {
        RejudgementLine done = doubtful("worker");
        decide("owner", done);
        correct(qa, read, offsetGauge(), "-0.85");
        settle(qa, done, frame);
        assertThat(frameOf(done, frame).result()).isEqualTo(FrameResult.MEASURED_AGAIN);
        assertThat(frameOf(done, frame).decided()).isNull();
    }
}
