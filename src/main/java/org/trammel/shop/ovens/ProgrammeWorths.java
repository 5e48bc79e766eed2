package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.thermal.AgeingSchedule;
import org.trammel.calc.thermal.ProgrammeWorth;
import org.trammel.calc.units.Answer;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.web.Formats;

/** What a programme is worth to each of its metals that age, beside what is published. */
@Component
class ProgrammeWorths {

    private final Settings settings;
    private final Formats formats;

    ProgrammeWorths(Settings settings, Formats formats) {
        this.settings = settings;
        this.formats = formats;
    }

    /** One line for each metal that ages; none for solution treatment, which ages nothing. */
    List<Worth> of(Programme programme) {
        return programme.purpose() == Purpose.SOLUTION
                ? List.of()
                : programme.content().metals().stream()
                        .map(metal -> MetalHeat.of(metal, settings))
                        .flatMap(Optional::stream)
                        .map(heat -> worth(programme, heat))
                        .toList();
    }

    private Worth worth(Programme programme, MetalHeat heat) {
        boolean ages = programme.purpose() == Purpose.AGEING;
        List<AgeingSchedule> published = ages
                ? AgeingSchedule.known().stream()
                        .filter(known -> known.alloy().equals(heat.alloy()))
                        .toList()
                : List.of();
        Answer<ProgrammeWorth> answer =
                ProgrammeWorth.of(programme.soaks(), heat.reference_degC(), heat.activation(), published);
        String words = ages ? "" : share(programme, heat);
        List<ProgrammeWorth.Beside> beside = List.of();
        String refusal = null;
        if (ages && answer instanceof Answer.Determined<ProgrammeWorth> there) {
            words = there.value().words();
            beside = there.value().beside();
            refusal = refusal(there.value(), heat);
        }
        return new Worth(
                heat.metal(),
                heat.reference_degC(),
                heat.activation().usual_kJPerMol(),
                heat.activation().low_kJPerMol(),
                heat.activation().high_kJPerMol(),
                heat.activation().source(),
                heat.worth(programme),
                beside,
                words,
                refusal);
    }

    private @Nullable String refusal(ProgrammeWorth worth, MetalHeat heat) {
        double times = worth.timesTheMost();
        return times > heat.overaged()
                ? "It is worth " + figure(times, 1) + " times the longest published age of " + heat.alloy()
                        + ", and the QA lead's rule refuses more than " + figure(heat.overaged(), 1) + " times."
                : null;
    }

    private String share(Programme programme, MetalHeat heat) {
        return "One such bake adds " + figure(heat.worth(programme).usual_h(), 2) + " h, "
                + figure(100 * heat.worth(programme).usual_h() / heat.age_h(), 1) + " % of the age of "
                + heat.alloy() + "; " + figure(100 * heat.share(), 0) + " % are allowed in the life of a frame.";
    }

    private String figure(double value, int decimals) {
        return formats.number(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP), decimals);
    }
}
