package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.trammel.calc.thermal.CureWindow;
import org.trammel.calc.thermal.Judged;

/** How much a powder cured. */
record CureAnswer(
        Judged judged,

        @Schema(description = "of full cure, by the coldest metal")
        double leastShare,

        @Schema(description = "by the hottest") double mostShare,

        @Schema(description = "the coldest metal at the least temperature of the pairs or above")
        double atTemperatureMin,

        double hottestDegC,

        @Schema(description = "the metal came more than 5 K above the hottest pair")
        boolean beyondSheet,

        @Schema(description = "that the pairs give, or that was given")
        double energyKJPerMol,

        List<SoakAnswer.HeatFinding> findings) {

    static CureAnswer of(CureWindow window, CureWindow.Cure cure) {
        return new CureAnswer(
                cure.judged(),
                cure.least_share(),
                cure.most_share(),
                cure.atTemperature_min(),
                cure.hottest_degC(),
                cure.beyondSheet(),
                window.energy_kJPerMol(),
                cure.findings().stream().map(SoakAnswer.HeatFinding::of).toList());
    }
}
