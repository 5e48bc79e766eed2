package org.trammel.calc.coating;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** By which rule the thickness of a film is judged; limits in µm, allowed themselves. */
public sealed interface FilmRule {

    /**
     * The mean reaches the nominal, none lies below four fifths of it, and of those below it there are few.
     *
     * <p>Source: ISO 19840 as told by a national coating association; for steel from 40 µm, in the trade used for other metals
     * too. Pages disagree whether a fifth may lie below or fewer.
     *
     * @param nominal_um dry film thickness that is asked for
     * @param strict whether fewer than a fifth may lie below it; else a fifth at most
     * @param most_um that no reading may pass, or null
     */
    record EightyTwenty(
            BigDecimal nominal_um, boolean strict, @Nullable BigDecimal most_um) implements FilmRule {}

    /**
     * Single readings are free; the mean of each spot and the mean of each area keep limits that the level sets.
     *
     * <p>Source: SSPC-PA 2; level 3 from its text, the others from memory.
     *
     * @param least_um of the specification
     * @param most_um of the specification
     */
    record SpotsAndAreas(BigDecimal least_um, BigDecimal most_um, Level level) implements FilmRule {}

    /**
     * The mean of each area is taken; the mean of all areas reaches the least, and no area lies below four fifths of it.
     *
     * <p>Source: practice of a quality mark for coated aluminium in building, from memory: five areas or more of about a square
     * centimetre, three to five readings each.
     */
    record MeanOfAreas(BigDecimal least_um) implements FilmRule {}

    /** How far the mean of a spot may leave the specification; the mean of an area may not, but for the last. */
    enum Level {
        /** Not at all. */
        ONE(100, 100),
        /** Up to 120 % of the most. */
        TWO(100, 120),
        /** From 80 % of the least to 120 % of the most; the usual one. */
        THREE(80, 120),
        /** From 80 % of the least to 150 % of the most. */
        FOUR(80, 150),
        /** From 80 % of the least, without a most, nor for areas. */
        FIVE(80, null);

        private final int least_percent;
        private final @Nullable Integer most_percent;

        Level(int least_percent, @Nullable Integer most_percent) {
            this.least_percent = least_percent;
            this.most_percent = most_percent;
        }

        BigDecimal leastOfSpot_um(BigDecimal least_um) {
            return least_um.multiply(BigDecimal.valueOf(least_percent, 2));
        }

        @Nullable
        BigDecimal mostOfSpot_um(BigDecimal most_um) {
            return most_percent == null ? null : most_um.multiply(BigDecimal.valueOf(most_percent, 2));
        }
    }
}
