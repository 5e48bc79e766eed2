package org.trammel.shop.people;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Refusal;

/**
 * Counts guesses, in the database, so that a restart or another tablet does not begin anew. A guess is counted before
 * it is checked and given back if it was right: guesses sent side by side do not slip through. Every step is a
 * transaction of its own, so that the refusal of an act does not take the count back with it.
 */
@Component
@Transactional(propagation = Propagation.REQUIRES_NEW)
class Guesses {

    private static final Duration COUNTS_KEPT = Duration.ofDays(1);
    private static final Duration UNKNOWN_KEPT = Duration.ofDays(400);

    /** More failures in an hour are counted all the same, but not written down one by one. */
    private static final int WRITTEN_PER_HOUR = 120;

    private final GuessCountRepository counts;
    private final SignOnFailureRepository failures;
    private final Clock clock;

    Guesses(GuessCountRepository counts, SignOnFailureRepository failures, Clock clock) {
        this.counts = counts;
        this.failures = failures;
        this.clock = clock;
    }

    /**
     * Counts a guess that is about to be checked.
     *
     * @throws Refusal if none is taken now; then nothing is counted and nothing may be checked
     */
    void count(Guess guess) {
        Instant now = clock.instant();
        List<GuessCount> locked = new ArrayList<>();
        for (String subject : subjects(guess)) {
            GuessCount count = locked(subject, now);
            if (count.locked()) {
                throw Refusal.state(
                        guess.deed(),
                        "This " + guess.named() + " is locked after " + GuessCount.LOCKS_AFTER + " wrong ones.",
                        "Ask the QA lead or the owner to lift the lock.");
            }
            if (count.closed(now)) {
                long seconds = Duration.between(now, count.openFrom()).toSeconds() + 1;
                throw Refusal.state(
                        guess.deed(),
                        "After several wrong ones, the next is taken in " + words(seconds) + ".",
                        "Wait, then key it slowly. The QA lead or the owner can give a new one.");
            }
            locked.add(count);
        }
        for (GuessCount count : locked) {
            if (count.subject().equals(guess.subject())) {
                count.countSecret(now);
            } else {
                count.countPlace(now);
            }
        }
    }

    /** Gives a counted guess back: it was right. */
    void right(Guess guess) {
        Instant now = clock.instant();
        for (String subject : subjects(guess)) {
            GuessCount count = locked(subject, now);
            if (count.subject().equals(guess.subject())) {
                count.forgetAll(now);
            } else {
                count.forgetOne(now);
            }
        }
    }

    /** Notes that a counted guess was wrong and says so. */
    Refusal wrong(Guess guess) {
        return wrong(guess, "Initials and password do not belong together.", "Type both again.");
    }

    /** The same for somebody who is signed on and typed the own password once more: initials were not asked for. */
    Refusal wrongOnceMore(Guess guess) {
        return wrong(guess, "This is not your password.", "Type your own password again.");
    }

    private Refusal wrong(Guess guess, String passwordWrong, String passwordAgain) {
        Optional<GuessCount> count = Optional.ofNullable(guess.subject()).flatMap(counts::findById);
        boolean locked = count.map(GuessCount::locked).orElse(false);
        Instant now = clock.instant();
        if (locked || failures.countByAtAfter(now.minus(Duration.ofHours(1))) < WRITTEN_PER_HOUR) {
            failures.save(new SignOnFailure(
                    now, guess.secret(), guess.personId(), guess.deviceId(), guess.address(), locked));
        }
        if (locked) {
            return Refusal.state(
                    guess.deed(),
                    "This was the " + GuessCount.LOCKS_AFTER + "th wrong " + guess.named() + ": it is locked now.",
                    "Ask the QA lead or the owner to lift the lock.");
        }
        int left = GuessCount.LOCKS_AFTER - count.map(GuessCount::failures).orElse(0);
        return switch (guess.secret()) {
            case PIN ->
                Refusal.input(
                        "pin",
                        guess.deed(),
                        "This is not the PIN that belongs to the name." + warning(left),
                        "Key it again, or choose another name.");
            case PASSWORD -> Refusal.input("password", guess.deed(), passwordWrong + warning(left), passwordAgain);
            case ENROLMENT, FIRST_OWNER ->
                Refusal.input(
                        "code",
                        guess.deed(),
                        "The code is unknown, used or too old.",
                        "Type it again, or have a new one made.");
        };
    }

    /** Whether somebody's PIN or password is locked. */
    @Transactional(readOnly = true, propagation = Propagation.SUPPORTS)
    boolean locked(long personId, String initials) {
        return counts.findAllById(List.of(Guess.pinOf(personId), Guess.passwordOf(initials))).stream()
                .anyMatch(GuessCount::locked);
    }

    /** Lets somebody guess again; part of the act that lifts the lock. */
    @Transactional(propagation = Propagation.MANDATORY)
    void lift(long personId, String initials, Instant at) {
        counts.lock(Guess.pinOf(personId)).ifPresent(count -> count.forgetAll(at));
        counts.lock(Guess.passwordOf(initials)).ifPresent(count -> count.forgetAll(at));
    }

    @Scheduled(fixedDelay = 3_600_000, initialDelay = 600_000)
    void sweep() {
        Instant now = clock.instant();
        counts.sweep(now.minus(COUNTS_KEPT));
        counts.sweepUnknown(now.minus(UNKNOWN_KEPT));
    }

    private GuessCount locked(String subject, Instant now) {
        return counts.lock(subject).orElseGet(() -> {
            counts.begin(subject, now);
            return counts.lock(subject).orElseThrow();
        });
    }

    private static List<String> subjects(Guess guess) {
        List<String> subjects = new ArrayList<>(guess.places());
        if (guess.subject() != null) {
            subjects.add(guess.subject());
        }
        return subjects.stream().sorted().toList();
    }

    private static String warning(int left) {
        return left <= 5 ? " After " + left + " more it locks." : "";
    }

    private static String words(long seconds) {
        return seconds < 120 ? seconds + " s" : (seconds + 59) / 60 + " min";
    }
}
