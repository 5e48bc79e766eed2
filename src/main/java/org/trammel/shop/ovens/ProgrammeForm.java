package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.inspection.GivenCodes;
import org.trammel.shop.records.Refusal;

/** The form of a programme: what was typed, and what a revision fills it with. */
record ProgrammeForm(Typed typed) {

    /** Steps one form has room for. */
    static final int STEPS = 4;

    NewProgramme content() {
        List<ProgrammeStep> steps = new ArrayList<>();
        for (int i = 1; i <= STEPS; i++) {
            if (!typed.text("set" + i).isEmpty()) {
                steps.add(new ProgrammeStep(
                        asked("set" + i),
                        asked("below" + i),
                        asked("above" + i),
                        asked("soak" + i),
                        typed.figure("longest" + i),
                        typed.ticked("unbroken" + i),
                        typed.figure("overshoot" + i),
                        typed.figure("spread" + i),
                        typed.figure("rise" + i)));
            }
        }
        return new NewProgramme(
                typed.text("what"),
                ProgrammeCheck.METALS.stream()
                        .filter(metal -> typed.ticked("metal" + metal))
                        .toList(),
                GivenCodes.typed(typed.text("guards")),
                steps,
                typed.figure("never"),
                typed.figure("reference"),
                typed.figure("least"),
                typed.figure("most"),
                typed.figure("naturalAgeing"),
                typed.figure("quenchDelay"),
                typed.figure("quenchToAge"),
                typed.ticked("countsSurvey"),
                typed.text("source"),
                gives());
    }

    private BigDecimal asked(String field) {
        BigDecimal value = typed.figure(field);
        if (value == null) {
            throw Refusal.input(
                    field,
                    typed.deed(),
                    "A step has a set temperature and nothing here.",
                    "Fill it in, or clear the step.");
        }
        return value;
    }

    private Map<RunFigure, List<String>> gives() {
        Map<RunFigure, List<String>> gives = new EnumMap<>(RunFigure.class);
        for (RunFigure figure : RunFigure.values()) {
            gives.put(figure, GivenCodes.typed(typed.text("gives" + figure)));
        }
        return gives;
    }

    /** What the fields show of a revision; none of a new programme. */
    static Map<String, Object> values(@Nullable NewProgramme content) {
        Map<String, Object> values = new HashMap<>();
        if (content == null) {
            return values;
        }
        values.put("what", content.what());
        content.metals().forEach(metal -> values.put("metal" + metal, true));
        values.put("guards", String.join(" ", content.guards()));
        values.put("never", content.never_degC());
        values.put("reference", content.reference_degC());
        values.put("least", content.least_h());
        values.put("most", content.most_h());
        values.put("naturalAgeing", content.naturalAgeing_h());
        values.put("quenchDelay", content.quenchDelay_s());
        values.put("quenchToAge", content.quenchToAge_h());
        values.put("countsSurvey", content.countsSurvey());
        values.put("source", content.source());
        content.gives().forEach((figure, codes) -> values.put("gives" + figure, String.join(" ", codes)));
        int i = 0;
        for (ProgrammeStep step : content.steps()) {
            i++;
            values.put("set" + i, step.set_degC());
            values.put("below" + i, step.below_K());
            values.put("above" + i, step.above_K());
            values.put("soak" + i, step.soak_h());
            values.put("longest" + i, step.longest_h());
            values.put("unbroken" + i, step.unbroken());
            values.put("overshoot" + i, step.overshoot_K());
            values.put("spread" + i, step.spread_K());
            values.put("rise" + i, step.rise_KPerH());
        }
        return values;
    }
}
