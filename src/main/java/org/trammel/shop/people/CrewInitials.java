package org.trammel.shop.people;

import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.PersonInitials;

/** Tells the log who its ids are. */
@Component
class CrewInitials implements PersonInitials {

    private final PersonRepository people;

    CrewInitials(PersonRepository people) {
        this.people = people;
    }

    @Override
    public Map<Long, String> all() {
        return people.initials().stream()
                .collect(Collectors.toMap(PersonRepository.Initials::getId, PersonRepository.Initials::getInitials));
    }
}
