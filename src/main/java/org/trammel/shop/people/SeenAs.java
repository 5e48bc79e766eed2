package org.trammel.shop.people;

import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;

/** Who people are to whoever asks now: names to those who work here, initials to an auditor. */
public final class SeenAs {

    private SeenAs() {}

    /** True if whoever asks now is not to read names and other personal data. */
    public static boolean hidden() {
        Authentication asking = SecurityContextHolder.getContext().getAuthentication();
        return asking != null
                && asking.getPrincipal() instanceof SignedOn who
                && !who.person().seesPersonalData();
    }

    /** Outside a request the service itself asks, and is told the name. */
    public static String of(Person person) {
        return hidden() ? person.initials() : person.name();
    }
}
