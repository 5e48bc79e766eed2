package org.trammel.shop.routes;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Before anybody can ask for them. */
@Component
@Order(0)
class FirstRoutesAtStart implements ApplicationRunner {

    private static final Logger LOG = LoggerFactory.getLogger(FirstRoutesAtStart.class);

    private final FirstRoutes first;

    FirstRoutesAtStart(FirstRoutes first) {
        this.first = first;
    }

    @Override
    public void run(ApplicationArguments arguments) {
        int laidOut = first.layOut();
        if (laidOut > 0) {
            LOG.info("This shop has no routes yet. Laid out {} as drafts for its QA lead to release", laidOut);
        }
    }
}
