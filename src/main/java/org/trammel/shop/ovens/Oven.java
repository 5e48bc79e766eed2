package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * An oven as it is read.
 *
 * @param purposes programmes of which it may run; empty where nobody said so yet
 * @param uniformity_K half the width that its places may differ by, as its class says
 * @param most_kg greatest mass of a load
 * @param fitted thermocouples in it now
 * @param locks why it may not be loaded today, one sentence each; empty if it may
 * @param surveyed_degC temperatures at which a survey stands today, coldest first; it may be used from the first to the last
 */
public record Oven(
        long id,
        String code,
        String what,
        Set<Purpose> purposes,
        BigDecimal uniformity_K,
        int length_mm,
        int width_mm,
        int height_mm,
        BigDecimal most_kg,
        OvenState state,
        String stateReason,
        Instant stateSince,
        long version,
        List<Fitted> fitted,
        List<String> locks,
        List<BigDecimal> surveyed_degC) {

    public Oven {
        uniformity_K = ProgrammeStep.bare(uniformity_K);
        most_kg = ProgrammeStep.bare(most_kg);
        fitted = List.copyOf(fitted);
        locks = List.copyOf(locks);
        surveyed_degC = List.copyOf(surveyed_degC);
    }

    /** What it is for, in words. */
    public String uses() {
        return purposes.isEmpty()
                ? "nothing, as long as nobody says so"
                : purposes.stream().map(Purpose::word).collect(Collectors.joining(", "));
    }

    /** Why it cannot run a programme: by what it is for, or by the temperatures at which it was surveyed; null if it can. */
    @Nullable
    String unfit(Programme programme) {
        if (!purposes.contains(programme.purpose())) {
            return code + " is for " + uses() + ", and programme " + programme.called() + " is one of "
                    + programme.purpose().word() + ".";
        }
        for (ProgrammeStep step : programme.content().steps()) {
            BigDecimal set = step.set_degC();
            if (surveyed_degC.isEmpty()
                    || set.compareTo(surveyed_degC.get(0)) < 0
                    || set.compareTo(surveyed_degC.get(surveyed_degC.size() - 1)) > 0) {
                return "Programme " + programme.called() + " goes to "
                        + ProgrammeStep.bare(set).toPlainString()
                        + " °C, and surveys of " + code + " stand at "
                        + surveyed_degC.stream().map(BigDecimal::toPlainString).collect(Collectors.joining(" and "))
                        + " °C.";
            }
        }
        return null;
    }

    /** Whether it may be loaded today. */
    public boolean open() {
        return locks.isEmpty();
    }
}
