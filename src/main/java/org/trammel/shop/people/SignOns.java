package org.trammel.shop.people;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.stations.Devices;
import org.trammel.shop.stations.Devices.Enrolled;

/** Signs people on at tablets by PIN and at desks by password. */
@Service
public class SignOns {

    /** A secret that was given to be changed is worth nothing after this time. */
    private static final Duration ONE_TIME_LIFE = Duration.ofDays(3);

    private static final String DEED = "Not signed on.";

    private final PersonRepository people;
    private final Guesses guesses;
    private final SecretHash secrets;
    private final Credentials credentials;
    private final SignOnBook book;
    private final Devices devices;
    private final Clock clock;

    SignOns(
            PersonRepository people,
            Guesses guesses,
            SecretHash secrets,
            Credentials credentials,
            SignOnBook book,
            Devices devices,
            Clock clock) {
        this.people = people;
        this.guesses = guesses;
        this.secrets = secrets;
        this.credentials = credentials;
        this.book = book;
        this.devices = devices;
        this.clock = clock;
    }

    /**
     * Signs somebody on at an enrolled tablet.
     *
     * @param own the PIN they choose in place of one that was given to be changed; null if there is nothing to change
     */
    public void atTablet(UUID actId, long deviceId, long personId, String pin, Place place, @Nullable String own) {
        Guess guess = Guess.pin(personId, deviceId, DEED);
        guesses.count(guess);
        PersonRow row = people.findById(personId).filter(PersonRow::active).orElse(null);
        if (!secrets.matches(pin, row == null ? null : row.pinHash()) || row == null) {
            throw guesses.wrong(guess);
        }
        guesses.right(guess);
        Instant now = clock.instant();
        if (row.pinOneTime()) {
            requireFresh(row.pinSetAt(), now);
            if (own == null || own.isEmpty()) {
                throw chooseFirst("newPin", "PIN");
            }
            credentials.keepPin(new Act(UUID.randomUUID(), personId, deviceId, now, null), pin, own);
        }
        book.enter(new Act(actId, personId, deviceId, now, null), deviceId, place);
    }

    /**
     * Signs somebody on at a desk.
     *
     * @param token what the browser's cookie holds; null if it has none
     * @param address where the request comes from, for counting guesses
     * @param own the password they choose in place of one that was given to be changed; null if there is none
     * @return the desk, with the token the browser must keep from now on
     */
    public Enrolled atDesk(
            UUID actId,
            @Nullable String token,
            String address,
            String initials,
            String password,
            @Nullable String own) {
        Long desk = token == null
                ? null
                : devices.byToken(token)
                        .filter(device -> !device.tablet())
                        .map(device -> device.id())
                        .orElse(null);
        String name = initials.trim().toUpperCase(Locale.ROOT);
        PersonRow row = people.findByInitials(name)
                .filter(PersonRow::active)
                .filter(person -> person.passwordHash() != null)
                .orElse(null);
        Guess guess = Guess.password(name, row == null ? null : row.id(), desk, address, DEED);
        guesses.count(guess);
        if (!secrets.matches(password, row == null ? null : row.passwordHash()) || row == null) {
            throw guesses.wrong(guess);
        }
        guesses.right(guess);
        Instant now = clock.instant();
        if (row.passwordOneTime()) {
            requireFresh(row.passwordSetAt(), now);
            if (own == null || own.isEmpty()) {
                throw chooseFirst("newPassword", "password");
            }
            credentials.keepPassword(new Act(UUID.randomUUID(), row.id(), desk, now, null), password, own);
        }
        return book.enterDesk(new Act(actId, row.id(), desk, now, null), desk);
    }

    /** Changes doer and second over at a tablet. */
    public void swap(UUID actId, SignedOn who) {
        book.swap(new Act(actId, who.person().id(), who.deviceId(), clock.instant(), null), who.deviceId());
    }

    /** Signs off one place, or both if none is named. */
    public void signOff(UUID actId, SignedOn who, @Nullable Place place) {
        book.leave(new Act(actId, who.person().id(), who.deviceId(), clock.instant(), null), who.deviceId(), place);
    }

    private static void requireFresh(@Nullable Instant given, Instant now) {
        if (given == null || given.plus(ONE_TIME_LIFE).isBefore(now)) {
            throw Refusal.person(
                    DEED,
                    "What was given to be changed at the first sign-on is older than three days.",
                    "Ask the QA lead or the owner for a new one.");
        }
    }

    private static Refusal chooseFirst(String field, String named) {
        return Refusal.input(
                field,
                "One thing is left: a " + named + " of your own.",
                "The one you typed is right; it was given to be changed at the first sign-on.",
                "Type it once more, and beside it the new one.");
    }
}
