package org.trammel.shop.designs;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.trammel.shop.records.Refusal;

/**
 * The entries of one form that are unusual. They are asked about together, so that whoever confirms has read every one of
 * them, and none passes that nobody was asked about.
 */
public final class Unusual {

    private record Said(String why, String instead) {}

    private final Map<String, Said> said = new LinkedHashMap<>();

    /** Notes one, with why it is unusual and what to do. */
    public void add(String field, String why, String instead) {
        said.putIfAbsent(field, new Said(why, instead));
    }

    /**
     * Asks about them, if there are any.
     *
     * @param confirmed they were asked about and meant
     */
    public void ask(String deed, boolean confirmed) {
        if (confirmed || said.isEmpty()) {
            return;
        }
        String first = said.keySet().iterator().next();
        if (said.size() == 1) {
            Said only = said.values().iterator().next();
            throw Refusal.ask(first, deed, only.why(), only.instead());
        }
        throw Refusal.ask(
                first,
                deed,
                said.values().stream().map(Said::why).collect(Collectors.joining(" ")),
                "Correct those that are not meant; confirm if all " + said.size() + " are meant.");
    }
}
