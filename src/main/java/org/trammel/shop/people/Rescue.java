package org.trammel.shop.people;

import java.time.Clock;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;

/** The last way in: who can start the service on its computer can give an owner a new password. */
@Component
class Rescue {

    private final PersonRepository people;
    private final Guesses guesses;
    private final SecretHash secrets;
    private final ActLog log;
    private final Clock clock;

    Rescue(PersonRepository people, Guesses guesses, SecretHash secrets, ActLog log, Clock clock) {
        this.people = people;
        this.guesses = guesses;
        this.secrets = secrets;
        this.log = log;
        this.clock = clock;
    }

    @Transactional
    String letIn(String initials) {
        Act act = new Act(UUID.randomUUID(), Act.SERVICE, null, clock.instant(), null);
        PersonRow row = people.findByInitials(initials.trim().toUpperCase(Locale.ROOT))
                .filter(PersonRow::active)
                .orElseThrow(() -> Refusal.missing(
                        "Nobody was let in.", "Nobody with these initials works here.", "Start with the right ones."));
        log.opens(act, "let-in", "person:" + row.id(), Chains.SHOP);
        guesses.lift(row.id(), row.initials(), act.at());
        String password = secrets.fresh(SecretRules.PASSWORD_LENGTH + 2);
        row.givePassword(secrets.of(password), true, act.at());
        log.event(Chains.SHOP, "let-in-from-console", Map.of("person", row.id()));
        return password;
    }
}
