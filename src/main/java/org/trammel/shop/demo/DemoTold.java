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

    private static final Map<String, Value> VALUES = Map.of(
            "O-113 080-3", value("0.70", null),
            "O-105-SA 080-3", value("1.00", null));

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

    private static Value value(String value, @Nullable String gauge) {
        return new Value(new BigDecimal(value), gauge);
    }

    private static String key(String order, String part, String characteristic) {
        return order + (part.isEmpty() ? " " : "-" + part + " ") + characteristic;
    }
}
