package org.trammel.shop.drift;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;

/** A figure is kept as it was typed or not at all: limits made of a figure that was rounded away silently are others. */
enum Digits {
    /** Of readings and their limits. */
    READING(6, 8, "six after the sign, eight before it"),
    /** Centre and standard deviation of a base. */
    BASE(10, 8, "ten after the sign, eight before it"),
    /** How a chart is drawn. */
    SETTING(4, 2, "four after the sign, two before it");

    private final int after;
    private final int before;
    private final String words;

    Digits(int after, int before, String words) {
        this.after = after;
        this.before = before;
        this.words = words;
    }

    /**
     * Lets a figure through that is kept whole.
     *
     * @param where it stands, as the sentence begins, with a space behind it; empty for a field of its own
     * @throws Refusal if it has more digits
     */
    void require(String field, String deed, String where, @Nullable BigDecimal figure) {
        if (figure == null) {
            return;
        }
        BigDecimal bare = figure.stripTrailingZeros();
        if (bare.scale() > after || bare.precision() - bare.scale() > before) {
            throw Refusal.input(
                    field,
                    deed,
                    where + figure.toPlainString() + " has more digits than are kept: " + words + ".",
                    "Enter a figure of fewer digits.");
        }
    }

    /** Looks at all figures of a base. */
    static void require(NewBase base, String deed) {
        BASE.require("centre", deed, "", base.centre());
        BASE.require("sigma", deed, "", base.sigma());
        SETTING.require("weight", deed, "", base.weight());
        SETTING.require("width", deed, "", base.width());
        SETTING.require("slack", deed, "", base.slack());
        SETTING.require("decision", deed, "", base.decision());
    }
}
