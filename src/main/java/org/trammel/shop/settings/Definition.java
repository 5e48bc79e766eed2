package org.trammel.shop.settings;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * What a setting is and what its value may be.
 *
 * @param place heading it stands under on the page
 * @param explanation what the value does; may be empty
 * @param lowest least value of a figure, included; null if there is none
 * @param highest greatest value of a figure, included; null if there is none
 */
public record Definition(
        String key,
        String place,
        String name,
        String explanation,
        Kind kind,
        String unit,
        @Nullable BigDecimal lowest,
        @Nullable BigDecimal highest) {

    /** The same with the currency where ¤ stands for it in the unit. */
    Definition in(String currency) {
        return new Definition(key, place, name, explanation, kind, unit.replace("¤", currency), lowest, highest);
    }

    /** How a value is written. */
    public enum Kind {
        NUMBER,
        WHOLE,
        TEXT,
        ZONE,
        LOCALE,
        CURRENCY;

        /** Whether the value is a number. */
        public boolean figure() {
            return this == NUMBER || this == WHOLE;
        }
    }
}
