package org.trammel.shop.welding;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.units.Answer;
import org.trammel.calc.welding.HeatInput;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.web.Formats;

/** Judges a welded node plainly by its procedure: current, heat, colour, fillet. */
@Component
class NodeJudge {

    private static final BigDecimal MOST_A = BigDecimal.valueOf(1000);
    private static final BigDecimal MOST_MM = BigDecimal.valueOf(100);

    private final WeldGauges gauges;
    private final Formats formats;

    NodeJudge(WeldGauges gauges, Formats formats) {
        this.gauges = gauges;
        this.formats = formats;
    }

    /** One thing that was judged, in a sentence. */
    record Finding(String words, boolean conforming) {}

    /** What it came to. */
    record Judged(
            List<Finding> found,
            @Nullable BigDecimal efficiency,
            @Nullable BigDecimal heat,
            @Nullable String gauge) {

        boolean conforming() {
            return found.stream().allMatch(Finding::conforming);
        }

        List<String> words() {
            return found.stream().map(Finding::words).toList();
        }

        /** Everything that does not conform, a sentence to each. */
        List<String> wrong() {
            return found.stream()
                    .filter(one -> !one.conforming())
                    .map(Finding::words)
                    .toList();
        }
    }

    Judged of(WeldTurn.At at, NodeRecord node, Welds.End entry, String deed) {
        NewProcedure content = at.procedure().content();
        boolean welds = at.procedure().welds(at.line().code());
        List<Finding> found = new ArrayList<>();
        current("ampsLeast", "Least current", entry.ampsLeast(), content.arc(), found, deed);
        current("ampsMost", "Greatest current", entry.ampsMost(), content.arc(), found, deed);
        if (entry.ampsLeast() != null
                && entry.ampsMost() != null
                && entry.ampsLeast().compareTo(entry.ampsMost()) > 0) {
            throw Refusal.input("ampsMost", deed, "The least current is greater than it.", "Enter the smaller first.");
        }
        BigDecimal heat = heat(entry, content.heat(), found, deed);
        colour(entry.colour(), content.nodes(), found, deed);
        String gauge = welds ? fillet(entry, content.nodes(), found, deed) : null;
        return new Judged(found, heat == null ? null : content.heat().efficiency(), heat, gauge);
    }

    private void current(
            String field, String what, @Nullable BigDecimal amps, ArcSettings arc, List<Finding> found, String deed) {
        if (amps == null) {
            return;
        }
        if (amps.signum() <= 0 || amps.compareTo(MOST_A) > 0) {
            throw Refusal.input(field, deed, said(amps) + " A is no welding current.", "Read it at the machine, in A.");
        }
        found.add(new Finding(
                what + " " + said(amps) + " A; " + said(arc.ampsFrom()) + " to " + said(arc.ampsTo())
                        + " A are in the procedure.",
                arc.takes(amps)));
    }

    private @Nullable BigDecimal heat(Welds.End entry, HeatRules rules, List<Finding> found, String deed) {
        long typed = Stream.of(entry.volts(), entry.amps(), entry.length_mm(), entry.seconds())
                .filter(java.util.Objects::nonNull)
                .count();
        if (typed == 0) {
            return null;
        }
        if (entry.volts() == null || entry.amps() == null || entry.length_mm() == null || entry.seconds() == null) {
            throw Refusal.input(
                    entry.volts() == null
                            ? "volts"
                            : entry.amps() == null ? "amps" : entry.length_mm() == null ? "length" : "seconds",
                    deed,
                    "A sampled node has voltage, current, length and time.",
                    "Enter all four, or none.");
        }
        if (rules.efficiency() == null) {
            throw Refusal.input(
                    "volts",
                    deed,
                    "The procedure names no efficiency of the arc, so that no heat input is computed.",
                    "Leave the sample out, or let the QA lead put a revision in force.");
        }
        Answer<HeatInput> answer =
                HeatInput.of(rules.efficiency(), entry.volts(), entry.amps(), entry.length_mm(), entry.seconds());
        if (answer instanceof Answer.NotDeterminable<HeatInput> gap) {
            throw Refusal.input(
                    gap.gaps().get(0).input(),
                    deed,
                    gap.gaps().stream().map(Answer.Gap::words).collect(Collectors.joining(" ")),
                    "Enter voltage, current, length and time of the same length of weld.");
        }
        BigDecimal heat = ((Answer.Determined<HeatInput>) answer).value().kJPerMm();
        found.add(new Finding(
                "Heat input " + formats.number(heat, 3) + " kJ/mm"
                        + (rules.most_kJ_per_mm() == null
                                ? "."
                                : "; "
                                        + (rules.least_kJ_per_mm() == null
                                                ? "up to "
                                                : said(rules.least_kJ_per_mm()) + " to ")
                                        + said(rules.most_kJ_per_mm()) + " kJ/mm are in the procedure."),
                rules.takes(heat)));
        return heat;
    }

    private static void colour(@Nullable BeadColour colour, NodeRules rules, List<Finding> found, String deed) {
        if (!rules.colours()) {
            return;
        }
        if (colour == null) {
            throw Refusal.input(
                    "colour", deed, "The colour of the bead is missing.", "Look at it cold, and choose one.");
        }
        found.add(new Finding(
                "Bead " + colour.word() + "."
                        + switch (colour.meaning()) {
                            case GOES_ON -> "";
                            case HELD -> " Air reached it: nothing more is welded before it is decided.";
                            case CUT_OUT -> " It is cut out, never melted again.";
                        },
                colour.meaning() == BeadColour.Meaning.GOES_ON));
    }

    private @Nullable String fillet(Welds.End entry, NodeRules rules, List<Finding> found, String deed) {
        if (!rules.measuresFillets()) {
            return null;
        }
        BigDecimal radius = entry.fillet_mm();
        if (radius == null || radius.signum() <= 0 || radius.compareTo(MOST_MM) > 0) {
            throw Refusal.input(
                    "fillet",
                    deed,
                    radius == null ? "The fillet radius is missing." : said(radius) + " mm is no radius of a fillet.",
                    "Lay the radius gauge on, and enter it in mm.");
        }
        String gauge = gauges.read(
                        entry.gauge() == null ? "" : entry.gauge(), "gauge", WeldGauges.RADIUS, "mm", radius, deed)
                .code();
        found.add(new Finding(
                "Fillet radius " + said(radius) + " mm; " + said(rules.filletLeast_mm()) + " to "
                        + said(rules.filletMost_mm()) + " mm are in the procedure.",
                rules.takesFillet(radius)));
        return gauge;
    }

    private String said(@Nullable BigDecimal figure) {
        return figure == null ? "any" : formats.number(figure.stripTrailingZeros());
    }
}
