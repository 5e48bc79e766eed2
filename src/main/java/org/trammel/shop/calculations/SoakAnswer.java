package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.Finding;
import org.trammel.calc.thermal.Judged;
import org.trammel.calc.thermal.RunVerdict;
import org.trammel.calc.thermal.StepResult;

/** What a run did for each step of its programme. */
record SoakAnswer(Judged judged, List<SoakedStep> steps, List<HeatFinding> findings) {

    record SoakedStep(
            Judged judged,

            @Schema(description = "the coldest load thermocouple in band")
            double soakH,

            @Schema(description = "what of it lies where the record has gaps")
            double inGapsH,

            double longestPartH,
            int parts,

            @Schema(description = "null where the band was never reached") @Nullable
            Double hottestDegC,

            @Nullable Double spreadK,
            @Nullable Double riseKPerH,
            List<HeatFinding> findings) {

        static SoakedStep of(StepResult step) {
            return new SoakedStep(
                    step.judged(),
                    step.soak().total_h(),
                    step.soak().inGaps_h(),
                    step.soak().longest_h(),
                    step.soak().parts(),
                    step.hottest_degC(),
                    step.spread_K(),
                    step.rise_KPerH(),
                    step.findings().stream().map(HeatFinding::of).toList());
        }
    }

    record HeatFinding(Judged judged, String words) {

        static HeatFinding of(Finding finding) {
            return new HeatFinding(finding.judged(), finding.words());
        }
    }

    static SoakAnswer of(RunVerdict verdict) {
        return new SoakAnswer(
                verdict.judged(),
                verdict.steps().stream().map(SoakedStep::of).toList(),
                verdict.findings().stream().map(HeatFinding::of).toList());
    }
}
