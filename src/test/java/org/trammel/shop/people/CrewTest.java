package org.trammel.shop.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.ShopTest;
import org.trammel.shop.Statements;
import org.trammel.shop.TestClock;

@ShopTest
class CrewTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 18);

    @Autowired
    private People people;

    @Autowired
    private Roster roster;

    @Autowired
    private Qualifications qualifications;

    @Autowired
    private Crew crew;

    @Autowired
    private TestClock clock;

    @Autowired
    private Statements statements;

    @Test
    void anOldRecordShowsTheNameOfItsDay() {
        Person person = people.newcomer(Role.WELDER);
        Instant before = clock.instant();
        clock.pass(Duration.ofDays(2));
        String another = "Another " + person.initials();
        roster.rename(people.act(people.owner()), person.id(), another);
        assertThat(crew.byId(person.id()).name()).isEqualTo(another);
        CalledOverTime called = crew.calledOverTime();
        String then = person.name() + " (now " + another + ")";
        assertThat(called.at(person.id(), before)).isEqualTo(then);
        assertThat(called.at(person.id(), before.minus(Duration.ofDays(900))))
                .as("before the first known name, that one")
                .isEqualTo(then);
        assertThat(called.at(person.id(), clock.instant())).isEqualTo(another);
        assertThat(crew.names().get(person.id())).isEqualTo(another + " (before: " + person.name() + ")");
    }

    @Test
    void twoWhoWorkHereAreNeverCalledTheSame() {
        Person person = people.newcomer(Role.WELDER);
        Person other = people.newcomer(Role.WELDER);
        String name = "  " + person.name().toUpperCase(Locale.ROOT).replace(" ", "   ");
        assertThatThrownBy(() ->
                        roster.takeOn(people.act(people.owner()), People.initials(), name, EnumSet.of(Role.WELDER)))
                .hasMessageContaining(person.initials() + ", who works here, is called");
        assertThatThrownBy(() -> roster.rename(people.act(people.owner()), other.id(), name))
                .hasMessageContaining(person.initials() + ", who works here, is called");
        roster.rename(people.act(people.owner()), person.id(), person.name());
        roster.leaves(people.act(people.owner()), person.id());
        assertThat(roster.rename(people.act(people.owner()), other.id(), person.name())
                        .name())
                .isEqualTo(person.name());
    }

    @Test
    void initialsAreNeverGivenTwiceNotEvenThoseOfSomebodyWhoLeft() {
        Person person = people.newcomer(Role.WELDER);
        roster.leaves(people.act(people.owner()), person.id());
        assertThatThrownBy(() -> roster.takeOn(
                        people.act(people.owner()), person.initials().toLowerCase(), "Other", EnumSet.of(Role.WELDER)))
                .hasMessageContaining("are or were somebody's");
    }

    @Test
    void whoIsNotQualifiedIsRefusedWithWhatIsMissing() {
        Person welder = people.newcomer(Role.WELDER);
        assertThatThrownBy(() -> crew.requireQualified(welder.id(), "WELD:AL:141", TODAY, "The step was not started."))
                .hasMessageContaining("holds no qualification to weld aluminium (WELD:AL:141)");
        enter(welder, "WELD:AL:141", LocalDate.of(2025, 9, 20));
        crew.requireQualified(welder.id(), "WELD:AL:141", LocalDate.of(2026, 3, 20), "The step was not started.");
        assertThatThrownBy(() -> crew.requireQualified(
                        welder.id(), "WELD:AL:141", LocalDate.of(2026, 3, 21), "The step was not started."))
                .hasMessageContaining("six-month confirmation")
                .hasMessageContaining("2026-03-20");
        assertThatThrownBy(() -> crew.requireQualified(
                        welder.id(), "WELD:AL:141", new BigDecimal("3.2"), TODAY, "The step was not started."))
                .hasMessageContaining("this wall is 3.2 mm");
    }

    @Test
    void aConfirmationGivesSixMonthsMoreButNotOnceTheyHaveRunOut() {
        Person welder = people.newcomer(Role.WELDER);
        Qualification inTime = enter(welder, "WELD:AL:141", LocalDate.of(2025, 9, 20));
        Qualification late = enter(welder, "WELD:STEEL:141", LocalDate.of(2025, 9, 1));
        assertThat(qualifications
                        .confirm(people.act(people.owner()), inTime.id(), TODAY)
                        .until())
                .isEqualTo(LocalDate.of(2026, 9, 18));
        assertThatThrownBy(() -> qualifications.confirm(people.act(people.owner()), late.id(), TODAY))
                .hasMessageContaining("ran out on 2026-03-01");
        assertThatThrownBy(() -> qualifications.confirm(people.act(people.owner()), inTime.id(), TODAY.plusDays(1)))
                .hasMessageContaining("after today");
    }

    @Test
    void nobodyConfirmsTheirOwnQualification() {
        Person qa = people.newcomer(Role.QA_LEAD);
        Qualification held = enter(qa, "WELD:AL:141", LocalDate.of(2026, 1, 1));
        assertThatThrownBy(() -> qualifications.confirm(people.act(qa.id()), held.id(), TODAY))
                .hasMessageContaining("for themself");
    }

    @Test
    void aDeputyHasTheRoleWhileEveryHolderIsAwayAndElseStandsInForTheOneWhoCausedIt() {
        clock.setTo(Instant.parse("2031-06-02T08:00:00Z"));
        LocalDate monday = LocalDate.of(2031, 6, 2);
        Person deputy = people.newcomer(Role.ALIGNER);
        roster.nameDeputy(people.act(people.owner()), Role.QA_LEAD, deputy.id(), monday, monday);
        people.newcomer(Role.QA_LEAD);
        assertThat(crew.byId(deputy.id()).is(Role.QA_LEAD)).isFalse();
        assertThat(crew.deputyOf(Role.QA_LEAD)).contains(crew.byId(deputy.id()));
        for (Person person : crew.active()) {
            if (person.is(Role.QA_LEAD)) {
                roster.away(people.act(people.owner()), person.id(), monday, monday);
            }
        }
        assertThat(crew.byId(deputy.id()).is(Role.QA_LEAD)).isTrue();
        assertThat(crew.byId(people.owner()).is(Role.QA_LEAD)).isFalse();
        roster.away(people.act(people.owner()), deputy.id(), monday, monday);
        assertThat(crew.byId(people.owner()).is(Role.QA_LEAD)).isTrue();
        assertThat(crew.deputyOf(Role.QA_LEAD))
                .hasValueSatisfying(person -> assertThat(person.is(Role.OWNER)).isTrue());
    }

    @Test
    void whoTookPartNeitherDecidesNorStandsInAndSomebodyElseAlwaysDoes() {
        clock.setTo(Instant.parse("2031-07-07T08:00:00Z"));
        LocalDate monday = LocalDate.of(2031, 7, 7);
        for (Person person : crew.active()) {
            if (person.is(Role.QA_LEAD)) {
                roster.away(people.act(people.owner()), person.id(), monday, monday);
            }
        }
        long lead = people.newcomer(Role.QA_LEAD).id();
        long deputy = people.newcomer(Role.ALIGNER).id();
        long owner = people.owner();
        roster.nameDeputy(people.act(owner), Role.QA_LEAD, deputy, monday, monday);
        assertThat(crew.standsInForQaLead(deputy, Set.of())).isFalse();
        assertThat(crew.standsInForQaLead(deputy, Set.of(lead))).isTrue();
        assertThat(crew.standsInForQaLead(owner, Set.of(lead))).isFalse();
        assertThat(crew.standsInForQaLead(owner, Set.of(lead, deputy))).isTrue();
        assertThat(crew.standsInForQaLead(deputy, Set.of(lead, deputy))).isFalse();
        assertThat(crew.standsInForQaLead(owner, Set.of(lead, deputy, owner))).isFalse();
    }

    @Test
    void anApprenticeIsNoDeputy() {
        Person apprentice = people.newcomer(Role.APPRENTICE);
        assertThatThrownBy(
                        () -> roster.nameDeputy(people.act(people.owner()), Role.QA_LEAD, apprentice.id(), TODAY, null))
                .hasMessageContaining("may not sign hold points");
    }

    @Test
    void theWholeCrewIsReadInOneStatement() throws Exception {
        people.newcomer(Role.WELDER, Role.ALIGNER);
        crew.all();
        assertThat(statements.during(() -> crew.all())).hasSize(1);
    }

    private Qualification enter(Person person, String kind, LocalDate confirmed) {
        Qualification sheet = new Qualification(
                0,
                0,
                kind,
                "ISO 9606-2",
                "Al",
                "141",
                new BigDecimal("0.7"),
                new BigDecimal("3.0"),
                null,
                LocalDate.of(2024, 1, 1),
                LocalDate.of(2027, 1, 1),
                true,
                confirmed,
                null);
        return qualifications.enter(people.act(people.owner()), person.id(), sheet);
    }
}
