package org.trammel.shop.people;

import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;

/** Who people are to whoever asks now: names to those who work here, initials to an auditor. */
public final class SeenAs {

    private SeenAs() {}

    /** Outside a request the service itself asks, and is told the name. */
    public static String of(Person person) {
        Authentication asking = SecurityContextHolder.getContext().getAuthentication();
        boolean hidden = asking != null
                && asking.getPrincipal() instanceof SignedOn who
                && !who.person().seesPersonalData();
        return hidden ? person.initials() : person.name();
    }
}
