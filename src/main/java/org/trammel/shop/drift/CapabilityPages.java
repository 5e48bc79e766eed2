package org.trammel.shop.drift;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.calc.statistics.Capability;
import org.trammel.calc.statistics.Histogram;
import org.trammel.calc.statistics.Normality;
import org.trammel.calc.statistics.Shape;
import org.trammel.calc.units.Answer;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.web.DotsView;
import org.trammel.shop.web.Formats;
import org.trammel.shop.web.HistogramView;
import org.trammel.shop.web.TypedFields;

/** How what is read of an axis fits between its limits. */
@Controller
class CapabilityPages {

    static final BigDecimal USUAL_WANTED = new BigDecimal("1.33");

    private static final Map<String, String> SHAPES = shapes();

    private final AxisFits fits;
    private final Formats formats;

    CapabilityPages(AxisFits fits, Formats formats) {
        this.fits = fits;
        this.formats = formats;
    }

    private static Map<String, String> shapes() {
        Map<String, String> shapes = new LinkedHashMap<>();
        shapes.put(Shape.NORMAL.name(), "normal");
        shapes.put(Shape.LOG_NORMAL.name(), "log-normal, readings above 0");
        shapes.put(Shape.WEIBULL.name(), "Weibull, readings above 0");
        shapes.put(Shape.AS_READ.name(), "as read, from " + Shape.FEWEST_AS_READ + " readings on");
        return shapes;
    }

    @GetMapping("/qa/drift/{id}/capability")
    String capability(@PathVariable long id, @RequestParam Map<String, String> fields, SignedOn who, Model model) {
        AxisFits.Asked asked = asked(fields);
        AxisFit fit = fits.of(id, asked);
        model.addAttribute("fit", fit);
        model.addAttribute("asked", asked);
        model.addAttribute("called", Welders.seenBy(who.person()).of(fit.series()));
        model.addAttribute("shapes", SHAPES);
        Map<String, String> limits = new LinkedHashMap<>();
        fit.choices().forEach(each -> limits.put(each.key(), words(fit, each)));
        model.addAttribute("limits", limits);
        if (fit.capability() instanceof Answer.Determined<Capability> there) {
            int decimals = DrawnCharts.decimals(there.value().deviation());
            model.addAttribute("c", there.value());
            model.addAttribute("decimals", decimals);
            model.addAttribute(
                    "words", formats.sentence(there.value().words(asked.wanted().doubleValue())));
            Histogram counted = ((Answer.Determined<Histogram>) fit.histogram()).value();
            int steps = Math.max(0, -(int) Math.floor(Math.log10(counted.width()) + 1e-9));
            model.addAttribute("steps", steps);
            model.addAttribute("histogram", histogram(fit, there.value(), counted, decimals, steps));
        } else {
            model.addAttribute(
                    "why",
                    ((Answer.NotDeterminable<Capability>) fit.capability())
                            .gaps().stream()
                                    .map(gap -> formats.sentence(gap.words()))
                                    .toList());
            model.addAttribute("decimals", decimals(fit));
            model.addAttribute("shownDecimals", DrawnCharts.fewest(fit.values(), decimals(fit)));
            model.addAttribute("dots", fit.values().isEmpty() ? null : dots(fit));
        }
        if (fit.normality() instanceof Answer.Determined<Normality> tested) {
            model.addAttribute("normality", formats.sentence(tested.value().words()));
        }
        return "drift/capability";
    }

    static AxisFits.Asked asked(Map<String, String> fields) {
        TypedFields typed = new TypedFields(fields, "Nothing was compared.");
        BigDecimal wanted = typed.figureOrNone("wanted");
        AxisFits.Asked asked = new AxisFits.Asked(
                typed.one(Shape.class, "shape", Shape.NORMAL),
                Objects.requireNonNullElse(wanted, USUAL_WANTED),
                typed.text("limits"),
                typed.dayOrNone("from"),
                typed.dayOrNone("until"));
        typed.refuseIfWrong();
        return asked;
    }

    private String words(AxisFit fit, AxisFit.Limits limits) {
        String of = limits.readings() == 1 ? ", 1 reading" : ", " + limits.readings() + " readings";
        BigDecimal lower = limits.lower();
        BigDecimal upper = limits.upper();
        if (lower == null && upper == null) {
            return "no limits" + of;
        }
        String words = lower == null
                ? "up to " + signed(upper)
                : upper == null ? "from " + signed(lower) : signed(lower) + " to " + signed(upper);
        return words + (fit.series().scaled() ? "" : " " + fit.series().unit()) + of;
    }

    private String signed(@Nullable BigDecimal figure) {
        return figure == null ? "" : formats.signed(figure, figure.scale());
    }

    private static int decimals(AxisFit fit) {
        double size = fit.values().stream().mapToDouble(Math::abs).max().orElse(0);
        return size > 0 ? DrawnCharts.decimals(size) : 2;
    }

    private static @Nullable Double figure(@Nullable BigDecimal figure) {
        return figure == null ? null : figure.doubleValue();
    }

    private HistogramView histogram(AxisFit fit, Capability capability, Histogram of, int decimals, int steps) {
        AxisFit.Limits chosen = Objects.requireNonNull(fit.chosen());
        return new HistogramView(
                "Histogram of " + capability.count() + " readings between "
                        + formats.signed(of.classes().get(0).from(), steps) + " and "
                        + formats.signed(
                                of.classes().get(of.classes().size() - 1).to(), decimals) + ", limits "
                        + words(fit, chosen) + ", mean " + formats.signed(capability.mean(), decimals) + ".",
                of.classes().stream()
                        .map(each -> new HistogramView.Bar(each.from(), each.to(), each.count()))
                        .toList(),
                figure(chosen.lower()),
                figure(chosen.upper()),
                capability.mean(),
                decimals,
                fit.series().chartUnit());
    }

    private DotsView dots(AxisFit fit) {
        AxisFit.Limits chosen = Objects.requireNonNull(fit.chosen());
        int count = fit.values().size();
        return new DotsView(
                (count == 1 ? "1 reading" : count + " readings") + " as dots, limits " + words(fit, chosen) + ".",
                List.of(new DotsView.Group("readings", fit.values())),
                figure(chosen.lower()),
                figure(chosen.upper()),
                fit.series().chartUnit());
    }
}
