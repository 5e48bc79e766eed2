package org.trammel.shop.cuts;

import java.math.BigDecimal;
import org.trammel.shop.records.Refusal;

/** Refuses figures of more digits than are kept, so that nothing is judged by one figure and kept as another. */
final class CutDigits {

    /** Digits before the sign. */
    private static final int WHOLE = 5;

    private CutDigits() {}

    static void require(String field, String deed, String what, BigDecimal value, int decimals) {
        BigDecimal plain = value.stripTrailingZeros();
        if (plain.scale() > decimals || plain.precision() - plain.scale() > WHOLE) {
            throw Refusal.input(
                    field,
                    deed,
                    what + " has more digits than are kept: " + decimals + " after the sign, " + WHOLE + " before it.",
                    "Enter what the gauge shows.");
        }
    }
}
