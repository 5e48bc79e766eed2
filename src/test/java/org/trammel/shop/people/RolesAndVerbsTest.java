package org.trammel.shop.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.ShopTest;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.stations.Devices;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;

/** Every role tries every verb: those of the row may, all others are refused as a person. */
@ShopTest
class RolesAndVerbsTest {

    private static final Set<Role> KEEPERS = EnumSet.of(Role.OWNER, Role.QA_LEAD);
    private static final Set<Role> OWNER = EnumSet.of(Role.OWNER);

    @Autowired
    private People people;

    @Autowired
    private Roster roster;

    @Autowired
    private Credentials credentials;

    @Autowired
    private Qualifications qualifications;

    @Autowired
    private Stations stations;

    @Autowired
    private Devices devices;

    @Autowired
    private Crew crew;

    private interface Verb {
        void by(Act act);
    }

    private record Row(Set<Role> allowed, Verb verb) {}

    @Test
    void onlyTheRolesOfTheTableMayDoIt() {
        Map<String, Row> table = table();
        Map<Role, Person> actors = new EnumMap<>(Role.class);
        for (Role role : Role.values()) {
            actors.put(role, people.newcomer(role));
        }
        // While there is a QA lead the owner does not stand in, so that the columns stay apart.
        table.forEach((verb, row) -> actors.forEach((role, actor) -> {
            Throwable outcome = catchThrowable(() -> row.verb().by(people.act(actor.id())));
            if (row.allowed().contains(role)) {
                assertThat(outcome).as(verb + " by " + role).isNull();
            } else {
                assertThat(outcome)
                        .as(verb + " by " + role)
                        .isInstanceOfSatisfying(
                                Refusal.class,
                                refusal -> assertThat(refusal.kind()).isEqualTo(Refusal.Kind.PERSON));
            }
        }));
    }

    @Test
    void onlyThoseWhoMayDoMoreThanTickMaySignAHoldPoint() {
        assertThat(EnumSet.allOf(Role.class).stream()
                        .filter(role -> people.newcomer(role).maySign())
                        .toList())
                .containsExactly(
                        Role.OWNER, Role.QA_LEAD, Role.ALIGNER, Role.WELDER, Role.HEAT_TREATER, Role.STATION_WORKER);
    }

    @Test
    void whoIsNobodyOrGoneDoesNothing() {
        Person gone = people.newcomer(Role.QA_LEAD);
        roster.leaves(people.act(people.owner()), gone.id());
        Throwable outcome = catchThrowable(() -> crew.require(gone.id(), "Nothing was done.", Role.QA_LEAD));
        assertThat(outcome).hasMessageContaining("does not work here any more");
        assertThat(catchThrowable(() -> crew.require(Act.SERVICE, "Nothing was done.", Role.OWNER)))
                .isInstanceOf(Refusal.class);
    }

    private static String other(String name) {
        return name + " " + People.initials();
    }

    private Map<String, Row> table() {
        Map<String, Row> table = new LinkedHashMap<>();
        table.put(
                "take on a worker",
                new Row(KEEPERS, act -> roster.takeOn(act, People.initials(), other("New"), worker())));
        table.put(
                "take on a QA lead",
                new Row(OWNER, act -> roster.takeOn(act, People.initials(), other("New"), EnumSet.of(Role.QA_LEAD))));
        table.put("rename", new Row(KEEPERS, act -> roster.rename(act, subject(), other("Renamed"))));
        table.put(
                "make an aligner",
                new Row(KEEPERS, act -> roster.giveRoles(act, subject(), EnumSet.of(Role.WELDER, Role.ALIGNER))));
        table.put("make an owner", new Row(OWNER, act -> roster.giveRoles(act, subject(), OWNER)));
        table.put("note that somebody left", new Row(KEEPERS, act -> roster.leaves(act, subject())));
        table.put(
                "name a deputy of the QA lead",
                new Row(KEEPERS, act -> roster.nameDeputy(act, Role.QA_LEAD, subject(), past(), past())));
        table.put(
                "name a deputy of the owner",
                new Row(OWNER, act -> roster.nameDeputy(act, Role.OWNER, subject(), past(), past())));
        table.put("note another's days away", new Row(KEEPERS, act -> roster.away(act, subject(), past(), past())));
        table.put("make a badge", new Row(KEEPERS, act -> roster.newBadge(act, subject())));
        table.put("give a PIN", new Row(KEEPERS, act -> credentials.resetPin(act, subject())));
        table.put("give a password", new Row(KEEPERS, act -> credentials.resetPassword(act, subject())));
        table.put("lift a lock", new Row(KEEPERS, act -> credentials.lift(act, subject(), "asked in person")));
        table.put("enter a qualification", new Row(KEEPERS, act -> qualifications.enter(act, subject(), align())));
        table.put(
                "take a qualification back",
                new Row(
                        KEEPERS,
                        act -> qualifications.end(act, entered(), LocalDate.of(2026, 3, 18), "asked in person")));
        table.put("add a station", new Row(KEEPERS, act -> stations.add(act, station())));
        table.put("admit a tablet", new Row(KEEPERS, act -> devices.admit(act, "T" + People.number(), List.of())));
        table.put(
                "withdraw a tablet",
                new Row(
                        KEEPERS,
                        act -> devices.withdraw(act, people.tablet().device().id())));
        return table;
    }

    private long subject() {
        return people.newcomer(Role.WELDER).id();
    }

    private long entered() {
        return qualifications
                .enter(people.act(people.owner()), subject(), align())
                .id();
    }

    private static Set<Role> worker() {
        return EnumSet.of(Role.STATION_WORKER);
    }

    private static LocalDate past() {
        return LocalDate.of(2020, 1, 1);
    }

    private static Qualification align() {
        return Qualification.of("ALIGN", "shop authorisation", past(), null, false);
    }

    private static Station station() {
        return new Station("S" + People.number(), "Bench of tests", 2, BigDecimal.TEN, false);
    }
}
