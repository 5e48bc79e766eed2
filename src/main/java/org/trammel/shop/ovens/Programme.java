package org.trammel.shop.ovens;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.AgeingSchedule;

/**
 * One revision of a programme as it is read.
 *
 * @param content what it asks
 */
public record Programme(
        long revisionId,
        String code,
        Purpose purpose,
        String letter,
        ProgrammeState state,
        NewProgramme content,
        long draftedBy,
        Instant draftedAt,
        @Nullable Long approvedBy,
        @Nullable Instant approvedAt,
        long version) {

    /** As people call it: P-AGE-6061 D. */
    public String called() {
        return code + " " + letter;
    }

    /** Its soaks, each at its set temperature. */
    List<AgeingSchedule.Soak> soaks() {
        return content.steps().stream()
                .map(step -> new AgeingSchedule.Soak(
                        step.set_degC().doubleValue(), step.soak_h().doubleValue()))
                .toList();
    }

    /** How long it lasts at least, without ramps. */
    public double soak_h() {
        return content.steps().stream()
                .mapToDouble(step -> step.soak_h().doubleValue())
                .sum();
    }
}
