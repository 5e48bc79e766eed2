package org.trammel.shop.people;

import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;

/** Says on the console how a shop without an owner begins, and helps an owner who is locked out. */
@Component
class FirstStartNotice {

    private static final Logger LOG = LoggerFactory.getLogger(FirstStartNotice.class);

    /** Names the person to be let in again: {@code --trammel.let-in=ME}. */
    private static final String LET_IN = "trammel.let-in";

    private final FirstStart firstStart;
    private final Rescue rescue;
    private final Environment environment;

    FirstStartNotice(FirstStart firstStart, Rescue rescue, Environment environment) {
        this.firstStart = firstStart;
        this.rescue = rescue;
        this.environment = environment;
    }

    @EventListener(ApplicationReadyEvent.class)
    @Order(Ordered.LOWEST_PRECEDENCE)
    void say() {
        if (firstStart.ownerMissing()) {
            LOG.warn(
                    "This shop has no owner yet. Open /first-owner and type this code, which works once: {}",
                    firstStart.newCode());
        }
        Optional.ofNullable(environment.getProperty(LET_IN))
                .filter(name -> !name.isBlank())
                .ifPresent(name -> LOG.warn(
                        "{} may sign on at a desk with this password, to be changed at once: {}. Start without {} next time.",
                        name,
                        rescue.letIn(name),
                        LET_IN));
    }
}
