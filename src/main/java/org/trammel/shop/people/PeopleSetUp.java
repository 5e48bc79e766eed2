package org.trammel.shop.people;

import java.util.List;
import org.springframework.stereotype.Component;
import org.trammel.shop.settings.SetUpPart;

@Component
class PeopleSetUp implements SetUpPart {

    private final Crew crew;

    PeopleSetUp(Crew crew) {
        this.crew = crew;
    }

    @Override
    public int place() {
        return 30;
    }

    @Override
    public State state() {
        List<Person> here = crew.active();
        boolean second = here.stream().filter(Person::maySign).count() > 1;
        return new State(
                "People",
                here.size(),
                second,
                second
                        ? "Give each of them a PIN and print the badge."
                        : "Take on at least one more who may sign: the second is never the one who works.",
                "/shop/people");
    }
}
