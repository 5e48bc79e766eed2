package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Readings the story tells by their value, and what was set straight after one. The swing arm of O-105 is measured by
 * itself, where half the tolerance of a whole frame holds: what would lie on the limit of a frame does not conform there.
 */
final class DemoTold {

    /**
     * A reading of the story.
     *
     * @param gauge it was read with; null for the one the order's height gauge gives
     */
    record Value(BigDecimal value, @Nullable String gauge) {}

    /**
     * A cold-set of the story.
     *
     * @param at in the shop's time
     * @param amount permanent set aimed at, in the characteristic's unit
     * @param pushMm how far it was pushed
     * @param after what was read then
     */
    record SetStraight(LocalDateTime at, BigDecimal amount, BigDecimal pushMm, BigDecimal after) {}

    private static final Map<String, Value> VALUES = Map.ofEntries(
            told("O-113 080-3", "0.70"),
            told("O-105-SA 080-3", "1.00"),
            told("O-115 080-3", "0.40"),
            told("O-103 080-3", "0.20"),
            told("O-106-SA 080-3", "0.20"),
            told("O-104-SA 080-3", "0.10"),
            told("O-116-SA 080-3", "0.30"),
            told("O-101 080-3", "0.00"));

    private static final Map<String, SetStraight> SET = Map.of(
            "O-105-SA 080-3",
            new SetStraight(
                    LocalDateTime.parse("2026-03-13T19:10"),
                    new BigDecimal("0.8"),
                    new BigDecimal("5.9"),
                    new BigDecimal("0.20")));

    private DemoTold() {}

    static @Nullable Value of(String order, String part, String characteristic) {
        return VALUES.get(key(order, part, characteristic));
    }

    static @Nullable SetStraight setStraight(String order, String part, String characteristic) {
        return SET.get(key(order, part, characteristic));
    }

    private static Map.Entry<String, Value> told(String key, String value) {
        return Map.entry(key, new Value(new BigDecimal(value), null));
    }

    private static String key(String order, String part, String characteristic) {
        return order + (part.isEmpty() ? " " : "-" + part + " ") + characteristic;
    }
}
