package org.trammel.shop.demo;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.records.Act;

/** Makes the acts of the crew at the demo's time. */
@Component
@Profile("demo")
class DemoActs {

    private final Crew crew;
    private final Clock clock;
    private final Map<String, Long> ids = new ConcurrentHashMap<>();

    DemoActs(Crew crew, Clock clock) {
        this.crew = crew;
        this.clock = clock;
    }

    Act by(String initials) {
        return new Act(UUID.randomUUID(), id(initials), null, clock.instant().truncatedTo(ChronoUnit.MICROS), null);
    }

    long id(String initials) {
        return ids.computeIfAbsent(
                initials, i -> crew.byInitials(i).map(Person::id).orElseThrow());
    }
}
