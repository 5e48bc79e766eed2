package org.trammel.shop.overview;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;

/** Who people are to a reader: names for those who work here, initials for an auditor. */
final class Names {

    private final Map<Long, String> known = new HashMap<>();

    private Names() {}

    String of(@Nullable Long personId) {
        return personId == null ? "" : known.getOrDefault(personId, "Trammel");
    }

    /** Asks the crew. */
    @Component
    static class Source {

        private final Crew crew;

        Source(Crew crew) {
            this.crew = crew;
        }

        Names seenBy(Person reader) {
            Names names = new Names();
            boolean whole = reader.seesPersonalData();
            crew.all().forEach(p -> names.known.put(p.id(), whole ? p.name() : p.initials()));
            return names;
        }
    }
}
