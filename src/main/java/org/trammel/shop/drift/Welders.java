package org.trammel.shop.drift;

import java.util.LinkedHashMap;
import java.util.Map;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;

/** Welders as whoever looks may know them: the QA lead by their initials, everybody else by a number. */
final class Welders {

    private final boolean named;
    private final Map<String, String> numbers = new LinkedHashMap<>();

    private Welders(boolean named) {
        this.named = named;
    }

    static Welders seenBy(Person who) {
        return new Welders(who.is(Role.QA_LEAD));
    }

    boolean named() {
        return named;
    }

    /** A level of a factor as it may be shown. */
    String of(Factor factor, String level) {
        return named || factor != Factor.WELDER
                ? level
                : numbers.computeIfAbsent(level, of -> "number " + (numbers.size() + 1));
    }

    /** What a series follows, such as jig J2. */
    String of(Series series) {
        return series.by() == Factor.WELDER && !named ? "a welder" : series.by().word() + " " + series.of();
    }
}
