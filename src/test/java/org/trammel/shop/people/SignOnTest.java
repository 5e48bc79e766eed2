package org.trammel.shop.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.Duration;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.ShopTest;
import org.trammel.shop.Statements;
import org.trammel.shop.TestClock;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.stations.Devices.Enrolled;

@ShopTest
class SignOnTest {

    @Autowired
    private People people;

    @Autowired
    private SignOns signOns;

    @Autowired
    private Doorkeeper doorkeeper;

    @Autowired
    private LastSeen lastSeen;

    @Autowired
    private Roster roster;

    @Autowired
    private Credentials credentials;

    @Autowired
    private Settings settings;

    @Autowired
    private TestClock clock;

    @Autowired
    private Statements statements;

    @Test
    void whoKeysTheirPinIsSignedOnWithTheirRoles() {
        Enrolled tablet = people.tablet();
        Person welder = people.somebody(Role.WELDER, Role.STATION_WORKER);
        on(tablet, welder, Place.DOER);
        SignedOn who = signedOn(tablet);
        assertThat(who.person()).isEqualTo(welder);
        assertThat(who.second()).isNull();
        assertThat(who.tablet()).isTrue();
        assertThat(who.deviceName()).isEqualTo(tablet.device().name());
    }

    @Test
    void oneStatementFindsOutWhoIsSignedOn() throws Exception {
        Enrolled tablet = people.tablet();
        on(tablet, people.somebody(Role.WELDER, Role.ALIGNER), Place.DOER);
        on(tablet, people.somebody(Role.STATION_WORKER), Place.SECOND);
        settings.today();
        assertThat(statements.during(() -> doorkeeper.who(tablet.token()))).hasSize(1);
    }

    @Test
    void twoPeopleAreSignedOnAtOneTabletAndChangePlacesWithoutSigningOff() {
        Enrolled tablet = people.tablet();
        Person welder = people.somebody(Role.WELDER);
        Person aligner = people.somebody(Role.ALIGNER);
        on(tablet, welder, Place.DOER);
        on(tablet, aligner, Place.SECOND);
        assertThat(signedOn(tablet).second()).isEqualTo(aligner);
        signOns.swap(UUID.randomUUID(), signedOn(tablet));
        assertThat(signedOn(tablet).person()).isEqualTo(aligner);
        assertThat(signedOn(tablet).second()).isEqualTo(welder);
        signOns.signOff(UUID.randomUUID(), signedOn(tablet), Place.DOER);
        assertThat(signedOn(tablet).person()).isEqualTo(welder);
        assertThat(signedOn(tablet).second()).isNull();
    }

    @Test
    void theSecondIsNeverTheOneWhoWorks() {
        Enrolled tablet = people.tablet();
        Person welder = people.somebody(Role.WELDER);
        on(tablet, welder, Place.DOER);
        assertThatThrownBy(() -> on(tablet, welder, Place.SECOND))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("always another person");
    }

    @Test
    void aChangeOfWorkerEndsTheSignOnBeforeAndLeavesTheSecond() {
        Enrolled tablet = people.tablet();
        Person second = people.somebody(Role.ALIGNER);
        Person next = people.somebody(Role.WELDER);
        on(tablet, people.somebody(Role.WELDER), Place.DOER);
        on(tablet, second, Place.SECOND);
        on(tablet, next, Place.DOER);
        assertThat(signedOn(tablet).person()).isEqualTo(next);
        assertThat(signedOn(tablet).second()).isEqualTo(second);
    }

    @Test
    void aTabletLocksAfterTheTimeOfTheSettingUnlessItIsUsed() {
        Enrolled tablet = people.tablet();
        Person welder = people.somebody(Role.WELDER);
        on(tablet, welder, Place.DOER);
        clock.pass(Duration.ofMinutes(9));
        assertThat(signedOn(tablet)).isNotNull();
        lastSeen.touch(tablet.device().id(), clock.instant());
        lastSeen.write();
        clock.pass(Duration.ofMinutes(9));
        assertThat(signedOn(tablet)).isNotNull();
        clock.pass(Duration.ofMinutes(1));
        AtTheDoor door = doorkeeper.who(tablet.token()).orElseThrow();
        assertThat(door.signedOn()).isNull();
        assertThat(door.lastDoer()).isEqualTo(welder);
    }

    @Test
    void nobodyStaysSignedOnLongerThanALongShiftHoweverBusyTheTabletIs() {
        Enrolled tablet = people.tablet();
        on(tablet, people.somebody(Role.WELDER), Place.DOER);
        for (int i = 0; i < 12 * 7; i++) {
            clock.pass(Duration.ofMinutes(9));
            lastSeen.touch(tablet.device().id(), clock.instant());
        }
        assertThat(doorkeeper.who(tablet.token()).orElseThrow().signedOn()).isNull();
    }

    @Test
    void whoLeavesIsSignedOffEverywhereAndCannotSignOn() {
        Enrolled tablet = people.tablet();
        Person welder = people.somebody(Role.WELDER);
        on(tablet, welder, Place.DOER);
        roster.leaves(people.act(people.owner()), welder.id());
        assertThat(doorkeeper.who(tablet.token()).orElseThrow().signedOn()).isNull();
        assertThatThrownBy(() -> on(tablet, welder, Place.DOER)).isInstanceOf(Refusal.class);
    }

    @Test
    void aPinThatWasGivenIsChangedAtTheFirstSignOn() {
        Enrolled tablet = people.tablet();
        Person welder = people.newcomer(Role.WELDER);
        String given = credentials.resetPin(people.act(people.owner()), welder.id());
        Refusal refusal = refused(tablet, welder, given);
        assertThat(refusal.field()).isEqualTo("newPin");
        signOns.atTablet(UUID.randomUUID(), tablet.device().id(), welder.id(), given, Place.DOER, People.PIN);
        assertThat(signedOn(tablet).person()).isEqualTo(welder);
        assertThat(refused(tablet, welder, given).field()).isEqualTo("pin");
    }

    @Test
    void aPinThatWasGivenIsWorthNothingAfterThreeDays() {
        Enrolled tablet = people.tablet();
        Person welder = people.newcomer(Role.WELDER);
        String given = credentials.resetPin(people.act(people.owner()), welder.id());
        clock.pass(Duration.ofDays(3).plusMinutes(1));
        assertThatThrownBy(() -> signOns.atTablet(
                        UUID.randomUUID(), tablet.device().id(), welder.id(), given, Place.DOER, People.PIN))
                .hasMessageContaining("older than three days");
    }

    @Test
    void aWithdrawnTabletIsNotKnownAnyMore() {
        Enrolled tablet = people.tablet();
        on(tablet, people.somebody(Role.WELDER), Place.DOER);
        people.withdraw(tablet);
        assertThat(doorkeeper.who(tablet.token())).isEmpty();
    }

    @Test
    void aDeskGetsANewTokenAtEverySignOn() {
        Person qa = people.atDesk(Role.QA_LEAD);
        Enrolled first =
                signOns.atDesk(UUID.randomUUID(), null, People.address(), qa.initials(), People.PASSWORD, null);
        Enrolled second = signOns.atDesk(
                UUID.randomUUID(), first.token(), People.address(), qa.initials(), People.PASSWORD, null);
        assertThat(second.device().id()).isEqualTo(first.device().id());
        assertThat(doorkeeper.who(first.token())).isEmpty();
        assertThat(signedOn(second).person()).isEqualTo(qa);
        assertThat(signedOn(second).tablet()).isFalse();
    }

    private void on(Enrolled tablet, Person person, Place place) {
        signOns.atTablet(UUID.randomUUID(), tablet.device().id(), person.id(), People.PIN, place, null);
    }

    private SignedOn signedOn(Enrolled device) {
        return doorkeeper.who(device.token()).orElseThrow().signedOn();
    }

    private Refusal refused(Enrolled tablet, Person person, String pin) {
        return catchThrowableOfType(
                Refusal.class,
                () -> signOns.atTablet(UUID.randomUUID(), tablet.device().id(), person.id(), pin, Place.DOER, null));
    }
}
