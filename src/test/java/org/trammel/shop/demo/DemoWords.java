package org.trammel.shop.demo;

import java.util.LinkedHashSet;
import java.util.Set;

/** The names that only the invented workshop may show, for tests of a shop without it. */
public final class DemoWords {

    private DemoWords() {}

    /** Names of its crew, of its town and of its frames. */
    public static Set<String> names() {
        Set<String> names = new LinkedHashSet<>(Set.of("Aldervik", "AV26"));
        DemoCast.ALL.forEach(
                member -> names.add(member.name().substring(member.name().indexOf(' ') + 1)));
        DemoOrders.read().forEach(order -> names.add(order.order()));
        return names;
    }
}
