package org.trammel.shop.drift;

import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.ControlChart.Alarm;

/**
 * A series over its base, and where it stands over all of its readings.
 *
 * @param base null while none was taken
 * @param told the alarm that tells most of it now: that of the reading a drift that goes on began at, else the first there
 *     was; null if there was none
 */
record Standing(
        Series series,
        @Nullable Base base,
        KeptStand kept,
        @Nullable Alarm told) {

    /** Where a series stands. */
    enum Stand {
        DRIFTS("drifts"),
        DRIFTED("drifted, within again"),
        NO_BASE("no base yet"),
        EMPTY("nothing read"),
        STILL("no drift");

        private final String word;

        Stand(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        /** The sign beside the word. */
        public String mark() {
            return switch (this) {
                case DRIFTS -> "not-conforming";
                case DRIFTED, NO_BASE -> "undecided";
                case EMPTY -> "waiting";
                case STILL -> "conforming";
            };
        }
    }

    public Stand stand() {
        if (kept.charted() == 0) {
            return Stand.EMPTY;
        }
        if (base == null) {
            return Stand.NO_BASE;
        }
        return kept.alarms() == 0 ? Stand.STILL : kept.driftsSince() != null ? Stand.DRIFTS : Stand.DRIFTED;
    }
}
