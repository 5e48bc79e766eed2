package org.trammel.shop.nonconformance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Roster;
import org.trammel.shop.people.Signed;

/** Every decision by every role, with and without a hand in the operation at fault. */
class DecisionsByRoleTest extends AtTheDesk {

    /** A day on which nobody else's test has named a deputy. */
    private static final LocalDate DAY = LocalDate.of(2026, 7, 1);

    @Autowired
    private Roster roster;

    @Autowired
    private Crew crew;

    @Autowired
    private MockMvc mvc;

    private Map<String, Long> people;

    @BeforeEach
    void crew() {
        shop.clock().setTo(Instant.parse("2026-07-01T07:30:00Z"));
        for (String table : List.of("deputy", "absence")) {
            jdbc.sql("delete from " + table + " where from_on = ?").param(DAY).update();
        }
        people = Map.of(
                "lead", qa,
                "owner", owner,
                "both", shop.hire(Role.QA_LEAD, Role.OWNER),
                "deputy", shop.hire(Role.STATION_WORKER),
                "aligner", shop.hire(Role.ALIGNER),
                "worker", worker,
                "apprentice", shop.hire(Role.APPRENTICE),
                "auditor", shop.hire(Role.AUDITOR),
                "gone", shop.hire(Role.QA_LEAD));
        roster.nameDeputy(shop.act(owner), Role.QA_LEAD, people.get("deputy"), DAY, DAY);
        jdbc.sql("update person set left_on = date '2026-06-30' where id = ?")
                .param(people.get("gone"))
                .update();
    }

    @AfterEach
    void allAreBack() {
        jdbc.sql("delete from absence where from_on = ?").param(DAY).update();
    }

    /** Whoever else could decide, of other tests too, is away that day. */
    private void onlyTheseAreHere(String... names) {
        List<Long> here = Arrays.stream(names).map(people::get).toList();
        jdbc.sql("insert into absence (person_id, from_on, until_on, noted_by)"
                        + " select distinct person_id, cast(:day as date), cast(:day as date), 0 from person_role"
                        + " where role in ('QA_LEAD', 'OWNER') and person_id not in (:here)")
                .param("day", DAY)
                .param("here", here)
                .update();
    }

    @Test
    void whoHoldsBothRolesSpeaksForBothOnlyWhereNobodyElseIsHereAndIsToldSoBefore() throws Exception {
        long alone = of(foundAfter("nobody"));
        long withLead = of(foundAfter("nobody"));
        assertThat(sheet(alone)).doesNotContain("You decide alone, in both roles");
        onlyTheseAreHere("both");
        assertThat(sheet(alone)).contains("You decide alone, in both roles");
        assertThat(deciding.propose(shop.act(people.get("both")), alone, complete(Decision.REPAIR, null)))
                .isTrue();
        jdbc.sql("delete from absence where person_id = ?")
                .param(people.get("lead"))
                .update();
        assertThat(deciding.propose(shop.act(people.get("both")), withLead, complete(Decision.REPAIR, null)))
                .isFalse();
        assertThat(agree(people.get("lead"), withLead)).isTrue();
    }

    private String sheet(long id) throws Exception {
        return mvc.perform(get("/nonconformances/" + id).with(Signed.on(crew.byId(people.get("both")))))
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    @ParameterizedTest(name = "{0} of {1} h, {2} took part, by {3}: {4}")
    @CsvFileSource(resources = "/states/decisions.csv", numLinesToSkip = 1)
    void whatComesOfADecisionStandsInTheTable(
            Decision decision, String hours, String tookPart, String by, String outcome) {
        WholeShop.Frame frame = foundAfter(tookPart);
        onlyTheseAreHere(
                (tookPart + "+" + by).contains("both")
                        ? new String[] {"lead", "owner", "both"}
                        : new String[] {"lead", "owner"});
        long id = of(frame);
        if (decision == Decision.CLEARED) {
            readAgain(frame);
        }
        Proposal proposal = complete(decision, hours.equals("-") ? null : hours);
        long person = people.get(by);
        if (outcome.equals("refused")) {
            assertThat(refusal(() -> deciding.propose(shop.act(person), id, proposal))
                            .kind()
                            .status())
                    .isEqualTo(403);
            assertThat(state(id)).isEqualTo(NonconformanceState.OPEN);
            assertThat(travellers.holdsOf(frame.serial()))
                    .singleElement()
                    .satisfies(h -> assertThat(h.liftedAt()).isNull());
            return;
        }
        boolean decided = deciding.propose(shop.act(person), id, proposal);
        assertThat(decided).isEqualTo(outcome.equals("decided"));
        assertThat(state(id)).isEqualTo(decided ? NonconformanceState.DECIDED : NonconformanceState.PROPOSED);
        assertThat(missing(id)).isEqualTo(waitsFor(outcome));
        assertThat(travellers.holdsOf(frame.serial()))
                .singleElement()
                .satisfies(h -> assertThat(h.liftedAt() != null).isEqualTo(decided));
        if (!decided) {
            assertThat(refusal(() -> agree(person, id)).what())
                    .as("nobody agrees twice")
                    .contains("not agreed to");
        }
    }

    private void readAgain(WholeShop.Frame frame) {
        shop.read(
                shop.hire(Role.STATION_WORKER),
                shop.at(frame).characteristics().get(0).characteristicId(),
                gauge,
                "0.1");
    }

    /** Roles that must still agree; only how many where either may be the one that is left. */
    private Object missing(long id) {
        List<String> given = jdbc.sql("select agreed_as from nonconformance_agreement where nonconformance_id = ?")
                .param(id)
                .query(String.class)
                .list();
        List<String> missing = deciding.mustAgree(id).stream()
                .map(Role::name)
                .filter(role -> !given.contains(role))
                .sorted()
                .toList();
        return given.size() == 1 && deciding.mustAgree(id).size() == 2 && byBoth(id) ? missing.size() : missing;
    }

    private boolean byBoth(long id) {
        return jdbc.sql("select person_id from nonconformance_agreement where nonconformance_id = ?")
                .param(id)
                .query(Long.class)
                .list()
                .contains(people.get("both"));
    }

    private static @Nullable Object waitsFor(String outcome) {
        return switch (outcome) {
            case "decided" -> List.of();
            case "waits" -> 1;
            default -> List.of(outcome.substring("waits for ".length()));
        };
    }

    /** Found not conforming at 080 by a worker nobody decides about; the others ticked there before. */
    private WholeShop.Frame foundAfter(String tookPart) {
        List<String> names = tookPart.equals("nobody") ? List.of() : Arrays.asList(tookPart.split("\\+"));
        SmallRoute.Op at = SmallRoute.op("080").plain("080-1", "0.3");
        names.forEach(name -> at.step("seen by " + name));
        WholeShop.Frame frame = shop.frame(
                SmallRoute.of(at.sheet(), SmallRoute.op("200").step("pack").sheet())
                        .sheet());
        Map<String, Long> steps = shop.at(frame).steps().stream()
                .collect(Collectors.toMap(s -> s.text().substring("seen by ".length()), s -> s.stepId()));
        names.forEach(name -> bench.tick(shop.act(people.get(name)), List.of(steps.get(name)), null, null));
        long measurer = shop.hire(Role.STATION_WORKER);
        shop.read(measurer, shop.at(frame).characteristics().get(0).characteristicId(), gauge, "0.5");
        return frame;
    }
}
