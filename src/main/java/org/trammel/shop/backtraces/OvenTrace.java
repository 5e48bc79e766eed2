package org.trammel.shop.backtraces;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.DriftTrace;
import org.trammel.calc.thermal.Judged;
import org.trammel.shop.people.StaysAsItIs;

/**
 * A thermocouple that failed its accuracy test.
 *
 * @param error_K how much too high it read then
 * @param lastGoodAt when it was last found right; null if never
 * @param widenedWords why the last good test itself is doubted; null where it is not
 * @param frames how many frames and parts are listed
 * @param waiting how many of them have no result yet
 */
public record OvenTrace(
        long id,
        String number,
        String oven,
        String thermocouple,
        BigDecimal error_K,
        @Nullable Instant lastGoodAt,
        Instant foundAt,
        boolean open,
        @Nullable String widenedWords,
        long openedBy,
        Instant openedAt,
        @Nullable Long closedBy,
        @Nullable Instant closedAt,
        @Nullable String closedWords,
        int frames,
        int waiting) {

    static final String PREFIX = "OT-";

    /** What people call it, such as OT-0003. */
    static String number(long id) {
        return PREFIX + String.format(java.util.Locale.ROOT, "%04d", id);
    }

    /**
     * A run told again.
     *
     * @param suspicion what the thermocouple did in it
     * @param drift_K error taken for it under linear drift, on top of what it was corrected by
     * @param worst_K the whole error found
     * @param reference_degC at which hours are counted; null where none are
     * @param recorded_h what its record is worth as it stands; null without a record
     * @param without_h by the other load thermocouples alone; null where there is none
     * @param judged its record as it stands
     * @param cleared whether it conforms whatever the error was
     */
    public record TracedRun(
            String run,
            String programme,
            Instant startedAt,
            DriftTrace.Suspicion suspicion,
            BigDecimal drift_K,
            BigDecimal worst_K,
            @Nullable BigDecimal reference_degC,
            @Nullable BigDecimal recorded_h,
            @Nullable BigDecimal linear_h,
            @Nullable BigDecimal worst_h,
            @Nullable BigDecimal without_h,
            @Nullable Judged judged,
            @Nullable Judged judgedLinear,
            @Nullable Judged judgedWorst,
            boolean cleared,
            String words) {

        /** Its role in this run, as people say it. */
        public String roleWord() {
            return switch (suspicion) {
                case JUDGED_BY_IT -> "load";
                case STEERED -> "control";
                default -> "over-temperature";
            };
        }
    }

    /**
     * A frame, or a part of one, that such a run released or may release.
     *
     * @param shippedAt when the frame left the shop; null while it has not
     * @param standing where it stands today
     * @param decided that it stays as it is, as it was put forward or decided; null if it was not
     * @param waits whether a result is asked for
     */
    public record TracedFrame(
            long id,
            String run,
            String serial,
            String part,
            String mark,
            TraceOutcome outcome,
            @Nullable Instant shippedAt,
            String standing,
            @Nullable TraceResult result,
            @Nullable String resultWords,
            @Nullable Long resultBy,
            @Nullable Instant resultAt,
            @Nullable StaysAsItIs decided,
            boolean waits) {}
}
