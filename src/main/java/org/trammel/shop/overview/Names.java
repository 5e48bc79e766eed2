package org.trammel.shop.overview;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.CalledOverTime;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;

/** Who people are to a reader: names for those who work here, initials for an auditor. */
final class Names {

    /** What the service is called where it acted by itself. */
    private static final String SERVICE = "Trammel";

    private final CalledOverTime called;
    private final boolean whole;

    private Names(CalledOverTime called, boolean whole) {
        this.called = called;
        this.whole = whole;
    }

    /** As they are called today. */
    String of(@Nullable Long personId) {
        if (personId == null) {
            return "";
        }
        if (!called.knows(personId)) {
            return SERVICE;
        }
        return whole ? called.now(personId) : called.initials(personId);
    }

    /** As they were called when it happened. */
    String at(@Nullable Long personId, Instant when) {
        return whole && personId != null && called.knows(personId) ? called.at(personId, when) : of(personId);
    }

    /** Asks the crew. */
    @Component
    static class Source {

        private final Crew crew;

        Source(Crew crew) {
            this.crew = crew;
        }

        Names seenBy(Person reader) {
            return new Names(crew.calledOverTime(), reader.seesPersonalData());
        }
    }
}
