package org.trammel.shop.people;

import java.util.Map;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.records.Words;
import org.trammel.shop.records.WordsRef;

/** Gives, changes and unlocks PINs and passwords. What is given is shown once and changed at the first sign-on. */
@Service
@Transactional
public class Credentials {

    private final PersonRepository people;
    private final Crew crew;
    private final LiftedLockRepository lifts;
    private final Words words;
    private final Guesses guesses;
    private final SecretHash secrets;
    private final ActLog log;

    Credentials(
            PersonRepository people,
            Crew crew,
            LiftedLockRepository lifts,
            Words words,
            Guesses guesses,
            SecretHash secrets,
            ActLog log) {
        this.people = people;
        this.crew = crew;
        this.lifts = lifts;
        this.words = words;
        this.guesses = guesses;
        this.secrets = secrets;
        this.log = log;
    }

    /** Gives somebody a PIN to be changed at the first sign-on; for QA lead and owner. */
    public String resetPin(Act act, long personId) {
        requireNew(log.opens(act, "reset-pin", "person:" + personId, Chains.SHOP));
        PersonRow row = forHelp(act, personId, "No PIN was given.");
        String pin = secrets.freshPin();
        row.givePin(secrets.of(pin), true, act.at());
        log.event(Chains.SHOP, "pin-given", Map.of("person", personId));
        return pin;
    }

    /** Lets somebody sign on at a desk, by a password to be changed at the first sign-on; for QA lead and owner. */
    public String resetPassword(Act act, long personId) {
        requireNew(log.opens(act, "reset-password", "person:" + personId, Chains.SHOP));
        PersonRow row = forHelp(act, personId, "No password was given.");
        String password = secrets.fresh(SecretRules.PASSWORD_LENGTH + 2);
        row.givePassword(secrets.of(password), true, act.at());
        log.event(Chains.SHOP, "password-given", Map.of("person", personId));
        return password;
    }

    /** Changes the PIN of the person who acts. Their old one is checked by the caller. */
    public void keepPin(Act act, String old, String own) {
        SecretRules.checkPin("newPin", own);
        requireOther("newPin", old, own);
        String hash = secrets.of(own); // before the chain of the shop is locked: it takes long
        if (!log.opens(act, "choose-pin", "person:" + act.by(), Chains.SHOP)) {
            return;
        }
        lock(act.by()).givePin(hash, false, act.at());
        log.event(Chains.SHOP, "pin-chosen", Map.of("person", act.by()));
    }

    /** Changes the password of the person who acts. Their old one is checked by the caller. */
    public void keepPassword(Act act, String old, String own) {
        Person person = crew.byId(act.by());
        SecretRules.checkPassword("newPassword", own, person.initials(), person.name());
        requireOther("newPassword", old, own);
        String hash = secrets.of(own);
        if (!log.opens(act, "choose-password", "person:" + act.by(), Chains.SHOP)) {
            return;
        }
        lock(act.by()).givePassword(hash, false, act.at());
        log.event(Chains.SHOP, "password-chosen", Map.of("person", act.by()));
    }

    /** Lifts the lock of another person's PIN and password; for QA lead and owner, with a reason. */
    public void lift(Act act, long personId, String reason) {
        if (!log.opens(act, "lift-lock", "person:" + personId, Chains.SHOP)) {
            return;
        }
        String deed = "The lock was not lifted.";
        crew.require(act.by(), deed, Role.OWNER, Role.QA_LEAD);
        if (act.by() == personId) {
            throw Refusal.person(
                    deed, "Nobody lifts a lock of their own.", "Ask the other of QA lead and owner to do it.");
        }
        String why = TypedText.line("reason", "The reason", deed, reason, 400);
        PersonRow row = lock(personId);
        guesses.lift(personId, row.initials(), act.at());
        WordsRef kept = words.keep(why);
        lifts.save(new LiftedLock(personId, act.by(), act.at(), kept.id()));
        log.event(Chains.SHOP, "lock-lifted", Map.of("person", personId, "words", kept.id(), "sha256", kept.sha256()));
    }

    /** Whether somebody's PIN or password is locked. */
    @Transactional(readOnly = true)
    public boolean locked(long personId) {
        return people.findById(personId)
                .map(row -> guesses.locked(personId, row.initials()))
                .orElse(false);
    }

    private PersonRow forHelp(Act act, long personId, String deed) {
        Person helper = crew.require(act.by(), deed, Role.OWNER, Role.QA_LEAD);
        PersonRow row = lock(personId);
        if (!row.active()) {
            throw Refusal.state(deed, row.initials() + " does not work here any more.", "Choose somebody of the crew.");
        }
        if (row.roles().contains(Role.OWNER) && !helper.is(Role.OWNER)) {
            throw Refusal.person(
                    deed,
                    row.initials() + " is an owner: who knew the owner's secret could sign for the owner.",
                    "Lift the lock if there is one; a forgotten secret is given anew by another owner, or with the code"
                            + " that the service shows on its console.");
        }
        return row;
    }

    private PersonRow lock(long personId) {
        return people.lock(personId)
                .orElseThrow(() -> Refusal.missing(
                        "The person was not found.",
                        "Nobody has the number " + personId + ".",
                        "Choose from the list."));
    }

    private static void requireNew(boolean fresh) {
        if (!fresh) {
            throw Refusal.state(
                    "Nothing was given.",
                    "This was sent before, and what was given then is shown only once.",
                    "Load the page again and give a new one.");
        }
    }

    private static void requireOther(String field, String old, String own) {
        if (old.equals(own)) {
            throw Refusal.input(
                    field, "Nothing was changed.", "The new one equals the old one.", "Choose another one.");
        }
    }
}
