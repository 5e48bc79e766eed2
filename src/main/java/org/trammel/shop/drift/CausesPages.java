package org.trammel.shop.drift;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.calc.statistics.Attribution;
import org.trammel.calc.statistics.Attribution.Difference;
import org.trammel.calc.statistics.Attribution.Effect;
import org.trammel.calc.units.Answer;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.web.DotsView;
import org.trammel.shop.web.Formats;
import org.trammel.shop.web.TypedFields;

/** What a shift of an axis hangs on. */
@Controller
class CausesPages {

    private static final int MOST_ROWS = 40;

    private final ShiftTraces traces;
    private final Formats formats;

    CausesPages(ShiftTraces traces, Formats formats) {
        this.traces = traces;
        this.formats = formats;
    }

    /**
     * A factor as the page tells it.
     *
     * @param sentences what was found by it, or why nothing
     * @param differences the largest first
     * @param dots null if no reading names it
     */
    public record Told(Factor factor, List<String> sentences, List<Difference> differences, DotsView dots) {}

    @GetMapping("/qa/drift/causes")
    String causes(@RequestParam Map<String, String> fields, SignedOn who, Model model) {
        List<ShiftTrace.Axis> axes = traces.axes();
        model.addAttribute("axes", axes);
        Map<String, String> codes = new LinkedHashMap<>();
        axes.forEach(axis -> codes.put(axis.code(), axis.code() + " " + axis.name()));
        model.addAttribute("codes", codes);
        model.addAttribute("named", Welders.seenBy(who.person()).named());
        if (axes.isEmpty()) {
            return "drift/causes";
        }
        ShiftTraces.Asked asked = asked(fields, axes.get(0).code());
        ShiftTrace trace = traces.of(asked, Welders.seenBy(who.person()));
        model.addAttribute("asked", asked);
        model.addAttribute("byJig", asked.factors().contains(Factor.JIG));
        model.addAttribute("byWelder", asked.factors().contains(Factor.WELDER));
        model.addAttribute("byTubes", asked.factors().contains(Factor.TUBE_SET));
        model.addAttribute("trace", trace);
        model.addAttribute("told", told(trace));
        model.addAttribute("decimals", decimals(trace));
        model.addAttribute(
                "shownDecimals",
                DrawnCharts.fewest(
                        trace.used().stream().map(ShiftTrace.Used::shown).toList(), decimals(trace)));
        if (trace.found() instanceof Answer.NotDeterminable<Attribution> none) {
            model.addAttribute(
                    "why",
                    none.gaps().stream()
                            .map(gap -> formats.sentence(gap.words()))
                            .toList());
        } else {
            model.addAttribute("found", ((Answer.Determined<Attribution>) trace.found()).value());
        }
        return "drift/causes";
    }

    /** Whoever comes without a choice compares all three, scaled as the axis is watched. */
    static ShiftTraces.Asked asked(Map<String, String> fields, String code) {
        TypedFields typed = new TypedFields(fields, "Nothing was compared.");
        List<Factor> chosen = new ArrayList<>(Arrays.stream(Factor.values())
                .filter(factor -> typed.ticked(factor.name()))
                .toList());
        if (chosen.isEmpty() && !typed.ticked("chosen")) {
            chosen.addAll(List.of(Factor.values()));
        }
        ShiftTraces.Asked asked = new ShiftTraces.Asked(
                typed.has("code") ? typed.text("code") : code,
                List.copyOf(chosen),
                typed.dayOrNone("from"),
                typed.dayOrNone("until"),
                typed.ticked("scaled"));
        typed.refuseIfWrong();
        return asked;
    }

    private static int decimals(ShiftTrace trace) {
        double size = trace.used().stream()
                .mapToDouble(each -> Math.abs(each.shown()))
                .max()
                .orElse(1);
        return size > 0 ? DrawnCharts.decimals(size) : 2;
    }

    private List<Told> told(ShiftTrace trace) {
        List<Told> told = new ArrayList<>();
        for (int i = 0; i < trace.factors().size(); i++) {
            Factor factor = trace.factors().get(i);
            List<DotsView.Group> groups = trace.levels(factor).entrySet().stream()
                    .map(level -> new DotsView.Group(
                            level.getKey(),
                            level.getValue().stream()
                                    .map(ShiftTrace.Used::shown)
                                    .toList()))
                    .toList();
            List<String> sentences = sentences(trace, i);
            told.add(new Told(
                    factor,
                    sentences,
                    differences(trace, i),
                    groups.isEmpty()
                            ? null
                            : new DotsView(
                                    "Readings by " + factor.word() + ". " + String.join(" ", sentences),
                                    groups,
                                    null,
                                    null,
                                    trace.unit())));
        }
        return told;
    }

    private List<String> sentences(ShiftTrace trace, int factor) {
        if (!(trace.found() instanceof Answer.Determined<Attribution> there)) {
            return List.of();
        }
        return there.value().sentencesOf(factor).stream().map(formats::sentence).toList();
    }

    private static List<Difference> differences(ShiftTrace trace, int factor) {
        return trace.found() instanceof Answer.Determined<Attribution> there
                        && there.value().effects().get(factor) instanceof Answer.Determined<Effect> effect
                ? effect.value().differences().stream().limit(MOST_ROWS).toList()
                : List.of();
    }
}
