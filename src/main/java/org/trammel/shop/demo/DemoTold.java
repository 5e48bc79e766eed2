package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Readings the story tells by their value. */
final class DemoTold {

    private static final Map<String, BigDecimal> VALUES = Map.of(
            "O-113 080-3", new BigDecimal("0.70"),
            "O-114 080-3", new BigDecimal("0.90"),
            "O-102 080-3", new BigDecimal("0.80"));

    private DemoTold() {}

    static @Nullable BigDecimal value(String order, String characteristic) {
        return VALUES.get(order + " " + characteristic);
    }
}
