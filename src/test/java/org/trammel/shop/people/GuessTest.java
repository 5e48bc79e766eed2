package org.trammel.shop.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestClock;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.stations.Devices.Enrolled;

@ShopTest
class GuessTest {

    private static final String WRONG = "718293";

    @Autowired
    private People people;

    @Autowired
    private SignOns signOns;

    @Autowired
    private Signatures signatures;

    @Autowired
    private Credentials credentials;

    @Autowired
    private Roster roster;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private TestClock clock;

    @Autowired
    private JdbcClient jdbc;

    @Test
    void slipsOfTheFingerCostNoTimeThenTheDelayGrows() {
        Person welder = people.somebody(Role.WELDER);
        Enrolled tablet = people.tablet();
        guess(tablet, welder);
        guess(tablet, welder);
        assertThat(guess(tablet, welder).field()).isEqualTo("pin");
        assertThat(guess(tablet, welder).getMessage()).contains("the next is taken in");
        clock.pass(Duration.ofSeconds(5));
        assertThat(guess(tablet, welder).field()).isEqualTo("pin");
        clock.pass(Duration.ofSeconds(9));
        assertThat(guess(tablet, welder).getMessage()).contains("the next is taken in");
        clock.pass(Duration.ofSeconds(1));
        assertThat(guess(tablet, welder).field()).isEqualTo("pin");
    }

    @Test
    void whoIsSignedOnAndTypesTheOwnPasswordOnceMoreIsAskedForNothingElse() {
        Person owner = people.somebody(Role.OWNER);
        SignedOn desk =
                new SignedOn(owner, null, people.tablet().device().id(), "desk", false, List.of(), clock.instant());
        assertThatThrownBy(() -> signatures.confirm(desk, "not this one"))
                .isInstanceOfSatisfying(Refusal.class, refusal -> {
                    assertThat(refusal.why()).startsWith("This is not your password.");
                    assertThat(refusal.instead()).isEqualTo("Type your own password again.");
                });
    }

    @Test
    void aDelayIsKeptForThePersonWhicheverTabletTheGuessComesFrom() {
        Person welder = people.somebody(Role.WELDER);
        Enrolled tablet = people.tablet();
        guess(tablet, welder);
        guess(tablet, welder);
        guess(tablet, welder);
        assertThat(guess(people.tablet(), welder).getMessage()).contains("the next is taken in");
    }

    @Test
    void aTabletIsSlowedWhenItsGuessesGoThroughTheNames() {
        Enrolled tablet = people.tablet();
        for (int i = 0; i < 6; i++) {
            assertThat(guess(tablet, people.somebody(Role.WELDER)).field()).isEqualTo("pin");
        }
        assertThat(guess(tablet, people.somebody(Role.WELDER)).getMessage()).contains("the next is taken in");
    }

    @Test
    void theRightPinForgetsTheWrongOnesBefore() {
        Person welder = people.somebody(Role.WELDER);
        Enrolled tablet = people.tablet();
        guess(tablet, welder);
        guess(tablet, welder);
        on(tablet, welder);
        guess(tablet, welder);
        guess(tablet, welder);
        on(tablet, welder);
    }

    @Test
    void tenWrongPinsLockAndAnotherAuthorisedPersonLiftsTheLockWithAReason() {
        Person welder = people.somebody(Role.WELDER);
        Person qa = people.somebody(Role.QA_LEAD);
        Enrolled tablet = people.tablet();
        lock(tablet, welder);
        clock.pass(Duration.ofDays(30));
        assertThatThrownBy(() -> on(tablet, welder)).hasMessageContaining("is locked after 10 wrong ones");
        assertThatThrownBy(() -> credentials.lift(people.act(welder.id()), welder.id(), "it is me"))
                .hasMessageContaining("QA lead");
        assertThatThrownBy(() -> credentials.lift(people.act(qa.id()), welder.id(), " "))
                .hasMessageContaining("reason");
        credentials.lift(people.act(qa.id()), welder.id(), "mistyped with thick gloves");
        on(tablet, welder);
    }

    @Test
    void nobodyLiftsALockOfTheirOwn() {
        Person qa = people.somebody(Role.QA_LEAD);
        lock(people.tablet(), qa);
        assertThatThrownBy(() -> credentials.lift(people.act(qa.id()), qa.id(), "it is me"))
                .hasMessageContaining("of their own");
        credentials.lift(people.act(people.owner()), qa.id(), "asked in person");
    }

    @Test
    void everyWrongPinIsWrittenDown() {
        Person welder = people.somebody(Role.WELDER);
        lock(people.tablet(), welder);
        assertThat(jdbc.sql("select locked from sign_on_failure where person_id = ? order by id")
                        .param(welder.id())
                        .query(Boolean.class)
                        .list())
                .hasSize(10)
                .endsWith(true)
                .containsOnlyOnce(true);
    }

    @Test
    void guessesSentSideBySideDoNotSlipThrough() throws Exception {
        Person welder = people.somebody(Role.WELDER);
        Enrolled tablet = people.tablet();
        ExecutorService hands = Executors.newFixedThreadPool(6);
        try {
            List<Callable<Refusal>> guesses = new ArrayList<>();
            for (int i = 0; i < 12; i++) {
                guesses.add(() -> guess(tablet, welder));
            }
            int checked = 0;
            for (Future<Refusal> answer : hands.invokeAll(guesses)) {
                checked += "pin".equals(answer.get().field()) ? 1 : 0;
            }
            assertThat(checked).isEqualTo(3);
        } finally {
            hands.shutdownNow();
        }
    }

    @Test
    void aWrongPinOfASignatureCountsEvenThoughItsActIsTakenBack() {
        Person aligner = people.somebody(Role.ALIGNER);
        for (int i = 0; i < 3; i++) {
            assertThatThrownBy(() ->
                            transaction.executeWithoutResult(status -> signatures.sign(aligner.id(), WRONG, null)))
                    .isInstanceOf(Refusal.class);
        }
        assertThatThrownBy(() -> signatures.sign(aligner.id(), People.PIN, null))
                .hasMessageContaining("the next is taken in");
        clock.pass(Duration.ofSeconds(5));
        assertThat(signatures.sign(aligner.id(), People.PIN, null)).isEqualTo(aligner);
    }

    @Test
    void aPinThatWasGivenSignsNothing() {
        Person aligner = people.newcomer(Role.ALIGNER);
        String given = credentials.resetPin(people.act(people.owner()), aligner.id());
        assertThatThrownBy(() -> signatures.sign(aligner.id(), given, null))
                .hasMessageContaining("choose your own PIN first");
    }

    @Test
    void aLockedOwnersSecretIsNotHandedToTheQaLeadWhoMayOnlyLiftTheLock() {
        Person owner = people.atDesk(Role.OWNER);
        Person qa = people.somebody(Role.QA_LEAD);
        for (int i = 0; i < 10; i++) {
            assertThatThrownBy(() -> signatures.sign(owner.id(), WRONG, null)).isInstanceOf(Refusal.class);
            clock.pass(Duration.ofMinutes(11));
        }
        assertThat(credentials.locked(owner.id())).isTrue();
        assertThatThrownBy(() -> credentials.resetPin(people.act(qa.id()), owner.id()))
                .hasMessageContaining("is an owner");
        assertThatThrownBy(() -> credentials.resetPassword(people.act(qa.id()), owner.id()))
                .hasMessageContaining("is an owner");
        credentials.lift(people.act(qa.id()), owner.id(), "the owner rang");
        assertThat(signatures.sign(owner.id(), People.PIN, null)).isEqualTo(owner);
    }

    @Test
    void aNameThatNobodyHasIsAnsweredLikeOneThatSomebodyHas() {
        Person qa = people.atDesk(Role.QA_LEAD);
        String nobody = People.initials();
        for (int i = 0; i < 10; i++) {
            String known = atDesk(qa.initials()).getMessage();
            assertThat(atDesk(nobody).getMessage()).isEqualTo(known);
            clock.pass(Duration.ofMinutes(11));
        }
        assertThat(atDesk(nobody).getMessage())
                .isEqualTo(atDesk(qa.initials()).getMessage())
                .contains("locked");
    }

    @Test
    void theDeskOfSomebodyWhoLeftAnswersLikeThatOfNobody() {
        Person auditor = people.atDesk(Role.AUDITOR);
        roster.leaves(people.act(people.owner()), auditor.id());
        assertThat(atDesk(auditor.initials()).getMessage())
                .isEqualTo(atDesk(People.initials()).getMessage());
    }

    private void lock(Enrolled tablet, Person person) {
        for (int i = 0; i < 10; i++) {
            guess(tablet, person);
            clock.pass(Duration.ofMinutes(11));
        }
    }

    private void on(Enrolled tablet, Person person) {
        signOns.atTablet(UUID.randomUUID(), tablet.device().id(), person.id(), People.PIN, Place.DOER, null);
    }

    private Refusal guess(Enrolled tablet, Person person) {
        return catchThrowableOfType(
                Refusal.class,
                () -> signOns.atTablet(UUID.randomUUID(), tablet.device().id(), person.id(), WRONG, Place.DOER, null));
    }

    private Refusal atDesk(String initials) {
        return catchThrowableOfType(
                Refusal.class,
                () -> signOns.atDesk(UUID.randomUUID(), null, People.address(), initials, "not the word", null));
    }
}
