package org.trammel.shop.people;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What people are and were called, so that an old record shows the name of its day. */
public final class CalledOverTime {

    private final Map<Long, List<NameSince>> known = new HashMap<>();

    /** @param names of each person from the first on */
    CalledOverTime(List<NameSince> names) {
        names.forEach(name ->
                known.computeIfAbsent(name.id(), id -> new ArrayList<>()).add(name));
    }

    public boolean knows(long personId) {
        return known.containsKey(personId);
    }

    /** The initials, which are never given to anybody else. */
    public String initials(long personId) {
        return known.get(personId).get(0).initials();
    }

    /** The name of today. */
    public String now(long personId) {
        return known.get(personId).get(0).now();
    }

    /** The name of that day, before the first known name that one; with today's where it is another. */
    public String at(long personId, Instant at) {
        String then = known.get(personId).get(0).name();
        for (NameSince name : known.get(personId)) {
            if (name.since() != null && !name.since().isAfter(at)) {
                then = name.name();
            }
        }
        String now = now(personId);
        return then == null || then.equals(now) ? now : then + " (now " + now + ")";
    }
}
