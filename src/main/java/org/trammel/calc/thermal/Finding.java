package org.trammel.calc.thermal;

/**
 * What one rule says.
 *
 * @param judged its verdict
 * @param words one sentence with the figures and the limit
 */
public record Finding(Judged judged, String words) {

    /**
     * On a limit upward: what was recorded may meet it and the record still not show that nothing went beyond.
     *
     * @param met whether what was recorded meets the limit
     * @param hidden_h longest time without a reading that can hide more, 0 if there is none
     */
    static Finding upTo(boolean met, double hidden_h, String words) {
        return met && hidden_h > 0
                ? new Finding(
                        Judged.UNDECIDED,
                        words + " For " + Said.hours(hidden_h)
                                + " nothing was recorded, and what happened then is not known.")
                : new Finding(met ? Judged.CONFORMING : Judged.NOT_CONFORMING, words);
    }
}
