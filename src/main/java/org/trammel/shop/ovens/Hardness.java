package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.HardnessMethod;

/**
 * Hardness, or what stands in for it, as it was found on the coupon of a run or on a frame of it.
 *
 * @param travellerId the frame or part; null for the coupon
 * @param on what it was found on, as people say it
 * @param scale with load and ball or the gauge's own divisions; nothing is converted
 * @param least limit that was asked for; null where none was
 * @param most the other limit of a window
 * @param gauge of the register; empty where a laboratory outside read it
 * @param report of that laboratory; null where it was read here
 * @param met whether it lies within what was asked for; null where nothing was
 */
public record Hardness(
        @Nullable Long travellerId,
        String on,
        HardnessMethod method,
        BigDecimal figure,
        String scale,
        @Nullable BigDecimal least,
        @Nullable BigDecimal most,
        String place,
        String gauge,
        @Nullable String report,
        @Nullable Boolean met,
        long by,
        Instant at) {

    static String word(HardnessMethod method) {
        return switch (method) {
            case BRINELL -> "Brinell";
            case VICKERS -> "Vickers";
            case ROCKWELL_B -> "Rockwell B";
            case HAND_PENETROMETER -> "hand gauge, screening";
            case REBOUND -> "rebound, screening";
            case CONDUCTIVITY -> "conductivity, screening";
        };
    }

    /** Kind of gauge of the register that reads so. */
    static String kind(HardnessMethod method) {
        return method == HardnessMethod.CONDUCTIVITY ? "CONDUCTIVITY" : "HARDNESS";
    }

    /** What it was read with, or whose report says it. */
    public String source() {
        return report == null ? gauge : "report " + report;
    }

    public String methodWord() {
        return word(method);
    }

    /** Whether it may show that a frame in doubt is hard enough; a screening never does. */
    public boolean shows() {
        return method.decides() && Boolean.TRUE.equals(met);
    }

    /**
     * As it is entered.
     *
     * @param travellerId the frame or part; null for the coupon
     * @param gauge of the register, in date; empty where {@code report} says whose figure it is
     * @param report laboratory outside and number of its report
     */
    public record Entry(
            @Nullable Long travellerId,
            @Nullable HardnessMethod method,
            @Nullable BigDecimal figure,
            @Nullable String scale,
            @Nullable BigDecimal least,
            @Nullable BigDecimal most,
            @Nullable String place,
            @Nullable String gauge,
            @Nullable String report) {}
}
