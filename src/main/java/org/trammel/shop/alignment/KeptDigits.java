package org.trammel.shop.alignment;

import java.math.BigDecimal;
import org.trammel.shop.records.Refusal;

/** A length is kept as it was typed or not at all: a digit that was rounded away silently would be judged as if it were read. */
enum KeptDigits {
    /** Of figures and points. */
    FIGURE(4, 8, "four after the sign, eight before it"),
    /** Of stations and diameters. */
    SET_UP(3, 6, "three after the sign, six before it");

    private final int after;
    private final int before;
    private final String words;

    KeptDigits(int after, int before, String words) {
        this.after = after;
        this.before = before;
        this.words = words;
    }

    /**
     * Lets a length through that is kept whole.
     *
     * @param whose what it is the length of, as the sentence begins, with a space behind it; empty for a plain figure
     * @throws Refusal if it has more digits
     */
    void require(String field, String deed, String whose, BigDecimal mm) {
        if (mm.scale() > after || mm.precision() - mm.scale() > before) {
            throw Refusal.input(
                    field,
                    deed,
                    whose + mm.toPlainString() + " has more digits than are kept: " + words + ".",
                    "Enter what the gauge shows.");
        }
    }
}
