package org.trammel.calc.thermal;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a run did for one step of its programme.
 *
 * @param step what was asked
 * @param soak time in band
 * @param shades the parts of the soak, at most some dozens, for a drawing
 * @param hottest_degC the hottest load thermocouple from the step's begin on, null if the band was never reached
 * @param spread_K greatest difference between load thermocouples in the soak, null likewise
 * @param rise_KPerH steepest rise of any load thermocouple on the way to the band, null likewise
 * @param findings one for each rule
 */
public record StepResult(
        OvenStep step,
        TimeInBand soak,
        List<LoadTrace.Stretch> shades,
        @Nullable Double hottest_degC,
        @Nullable Double spread_K,
        @Nullable Double rise_KPerH,
        List<Finding> findings) {

    public StepResult {
        shades = List.copyOf(shades);
        findings = List.copyOf(findings);
    }

    /** The worst of its findings. */
    public Judged judged() {
        return findings.stream().map(Finding::judged).reduce(Judged.CONFORMING, Judged::worse);
    }
}
