package org.trammel.shop.people;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.trammel.shop.records.Refusal;

/**
 * Checks a signer's own secret at the moment of a signature. Being signed on is not a signature.
 *
 * <p>A wrong one is counted like a wrong sign-on, in a transaction of its own, whatever becomes of the transaction
 * around the call.
 */
@Service
public class Signatures {

    private final PersonRepository people;
    private final Crew crew;
    private final Guesses guesses;
    private final SecretHash secrets;

    Signatures(PersonRepository people, Crew crew, Guesses guesses, SecretHash secrets) {
        this.people = people;
        this.crew = crew;
        this.guesses = guesses;
        this.secrets = secrets;
    }

    /**
     * Checks the signer's PIN. Whether this person may sign this point is for the caller to ask.
     *
     * @param deviceId tablet or desk it was keyed at; null if it is not known
     * @return the signer
     * @throws Refusal if the PIN is wrong, must be changed first, or is closed to guesses now
     */
    public Person sign(long personId, String pin, @Nullable Long deviceId) {
        Guess guess = Guess.pin(personId, deviceId, "Not signed.");
        guesses.count(guess);
        PersonRow row = people.findById(personId).filter(PersonRow::active).orElse(null);
        if (!secrets.matches(pin, row == null ? null : row.pinHash()) || row == null) {
            throw guesses.wrong(guess);
        }
        guesses.right(guess);
        if (row.pinOneTime()) {
            throw Refusal.person(
                    "Not signed.",
                    "The PIN of " + row.initials() + " was given to be changed at the first sign-on.",
                    "At a tablet, or at a desk under your name at the foot of the sheet, choose your own PIN first.");
        }
        return crew.byId(personId);
    }

    /**
     * Asks the signed-on person once more for their secret before something that weighs: the PIN at a tablet, the
     * password at a desk.
     *
     * @throws Refusal if it is wrong or closed to guesses now
     */
    public void confirm(SignedOn who, String secret) {
        PersonRow row = people.findById(who.person().id()).orElseThrow();
        Guess guess = who.tablet()
                ? Guess.pin(row.id(), who.deviceId(), "Not done.")
                : Guess.password(row.initials(), row.id(), who.deviceId(), null, "Not done.");
        guesses.count(guess);
        if (!row.active() || !secrets.matches(secret, who.tablet() ? row.pinHash() : row.passwordHash())) {
            throw guesses.wrongOnceMore(guess);
        }
        guesses.right(guess);
    }
}
