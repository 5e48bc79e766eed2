package org.trammel.shop.people;

import java.time.Clock;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.shop.people.SignOnFailure.Secret;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.stations.Devices;

/**
 * Makes the first owner of a shop that has none. The code for it is shown on the console of the computer the service
 * runs on, so that only who has that may begin; there is no name and no secret to begin with.
 */
@Service
public class FirstStart {

    private static final String DEED = "The first owner was not made.";

    private final PersonRepository people;
    private final FirstOwnerCodeRepository codes;
    private final Roster roster;
    private final Guesses guesses;
    private final SecretHash secrets;
    private final ActLog log;
    private final TransactionTemplate transaction;
    private final Clock clock;

    FirstStart(
            PersonRepository people,
            FirstOwnerCodeRepository codes,
            Roster roster,
            Guesses guesses,
            SecretHash secrets,
            ActLog log,
            TransactionTemplate transaction,
            Clock clock) {
        this.people = people;
        this.codes = codes;
        this.roster = roster;
        this.guesses = guesses;
        this.secrets = secrets;
        this.log = log;
        this.transaction = transaction;
        this.clock = clock;
    }

    /** What the first owner enters about themself. */
    public record Entry(String initials, String name, String password, String pin) {}

    /** Whether the shop has no owner yet. */
    public boolean ownerMissing() {
        return people.activeWith(Role.OWNER) == 0;
    }

    /** Makes the code that is shown on the console; earlier ones that were not used are worth nothing from now on. */
    public String newCode() {
        if (!ownerMissing()) {
            throw Refusal.state("No code was made.", "The shop has an owner.", "Sign on as the owner.");
        }
        String code = secrets.fresh(16).toUpperCase(Locale.ROOT);
        transaction.executeWithoutResult(status -> {
            codes.forgetOpen();
            codes.save(new FirstOwnerCode(Devices.hash(code), clock.instant()));
        });
        return code.replaceAll("(.{4})(?!$)", "$1-");
    }

    /**
     * Makes the first owner.
     *
     * @param address where the request comes from, for counting guesses
     */
    public Person make(UUID actId, String code, String address, Entry entry) {
        SecretRules.checkPassword("password", entry.password(), entry.initials(), entry.name());
        SecretRules.checkPin("pin", entry.pin());
        Guess guess = Guess.code(Secret.FIRST_OWNER, address, DEED);
        guesses.count(guess);
        String typed = Devices.hash(code.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", ""));
        Instant now = clock.instant();
        Optional<Person> made = Optional.ofNullable(transaction.execute(status -> {
            Optional<FirstOwnerCode> open = ownerMissing() ? codes.lockOpen(typed) : Optional.empty();
            return open.map(one -> made(one, new Act(actId, Act.SERVICE, null, now, null), entry))
                    .orElse(null);
        }));
        if (made.isEmpty()) {
            throw guesses.wrong(guess);
        }
        guesses.right(guess);
        return made.get();
    }

    private Person made(FirstOwnerCode code, Act act, Entry entry) {
        if (!log.opens(act, "make-first-owner", "person:first", Chains.SHOP)) {
            throw Refusal.state(DEED, "It was made before.", "Sign on.");
        }
        PersonRow row = roster.entered(act, entry.initials(), entry.name(), EnumSet.of(Role.OWNER), DEED);
        row.givePassword(secrets.of(entry.password()), false, act.at());
        row.givePin(secrets.of(entry.pin()), false, act.at());
        code.use(act.at());
        log.event(Chains.SHOP, "first-owner-made", Map.of("person", row.id()));
        return new Person(row.id(), row.initials(), row.name(), row.roles(), true);
    }
}
