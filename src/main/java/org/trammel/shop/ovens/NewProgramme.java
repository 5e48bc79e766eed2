package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A revision of a programme as it is drafted.
 *
 * @param metals codes of the metals it is for
 * @param guards operations that a frame of these metals passes only by a released run of a programme for them; may be none
 * @param never_degC no thermocouple may reach it, or null
 * @param reference_degC at which equivalent hours are asked for, or null where none are
 * @param least_h equivalent hours that the coldest must reach
 * @param most_h equivalent hours that the hottest must not pass
 * @param naturalAgeing_h least time between the weld and the oven
 * @param quenchDelay_s longest from door to water
 * @param quenchToAge_h longest between quench and oven
 * @param countsSurvey whether the coldest and hottest place of the oven's survey are counted on top of what the load's
 *     thermocouples read
 * @param source of the numbers
 * @param gives characteristics of the operations it guards that its runs give, by the figure of the record
 */
public record NewProgramme(
        String what,
        List<String> metals,
        List<String> guards,
        List<ProgrammeStep> steps,
        @Nullable BigDecimal never_degC,
        @Nullable BigDecimal reference_degC,
        @Nullable BigDecimal least_h,
        @Nullable BigDecimal most_h,
        @Nullable BigDecimal naturalAgeing_h,
        @Nullable BigDecimal quenchDelay_s,
        @Nullable BigDecimal quenchToAge_h,
        boolean countsSurvey,
        String source,
        Map<RunFigure, List<String>> gives) {

    /** One whose runs give no characteristic. */
    public NewProgramme(
            String what,
            List<String> metals,
            List<String> guards,
            List<ProgrammeStep> steps,
            @Nullable BigDecimal never_degC,
            @Nullable BigDecimal reference_degC,
            @Nullable BigDecimal least_h,
            @Nullable BigDecimal most_h,
            @Nullable BigDecimal naturalAgeing_h,
            @Nullable BigDecimal quenchDelay_s,
            @Nullable BigDecimal quenchToAge_h,
            boolean countsSurvey,
            String source) {
        this(
                what,
                metals,
                guards,
                steps,
                never_degC,
                reference_degC,
                least_h,
                most_h,
                naturalAgeing_h,
                quenchDelay_s,
                quenchToAge_h,
                countsSurvey,
                source,
                Map.of());
    }

    /** The same, giving characteristics. */
    public NewProgramme giving(Map<RunFigure, List<String>> codes) {
        return new NewProgramme(
                what,
                metals,
                guards,
                steps,
                never_degC,
                reference_degC,
                least_h,
                most_h,
                naturalAgeing_h,
                quenchDelay_s,
                quenchToAge_h,
                countsSurvey,
                source,
                codes);
    }

    public NewProgramme {
        metals = List.copyOf(metals);
        guards = List.copyOf(guards);
        steps = List.copyOf(steps);
        gives = Map.copyOf(gives);
        never_degC = ProgrammeStep.bareOrNone(never_degC);
        reference_degC = ProgrammeStep.bareOrNone(reference_degC);
        least_h = ProgrammeStep.bareOrNone(least_h);
        most_h = ProgrammeStep.bareOrNone(most_h);
        naturalAgeing_h = ProgrammeStep.bareOrNone(naturalAgeing_h);
        quenchDelay_s = ProgrammeStep.bareOrNone(quenchDelay_s);
        quenchToAge_h = ProgrammeStep.bareOrNone(quenchToAge_h);
    }
}
