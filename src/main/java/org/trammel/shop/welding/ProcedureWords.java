package org.trammel.shop.welding;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.web.Formats;

/** A procedure in short lines, as a welder reads it at the station. */
@Component
class ProcedureWords {

    private final Formats formats;

    ProcedureWords(Formats formats) {
        this.formats = formats;
    }

    /** One thing of a procedure. */
    public record Line(String name, String words) {}

    List<Line> of(Procedure procedure) {
        NewProcedure c = procedure.content();
        List<Line> lines = new ArrayList<>();
        add(
                lines,
                "Process",
                c.process()
                        + (c.joints().isEmpty() ? "" : ", " + String.join(" and ", c.joints()))
                        + range(", wall ", c.thicknessFrom_mm(), c.thicknessTo_mm(), " mm"));
        add(
                lines,
                "Filler",
                String.join(" or ", c.arc().fillers())
                        + (c.arc().filler_mm() == null
                                ? ""
                                : ", " + bare(c.arc().filler_mm()) + " mm"));
        add(
                lines,
                "Gas",
                String.join(" or ", c.arc().gases())
                        + (c.arc().flow_L_per_min() == null
                                ? ""
                                : ", " + bare(c.arc().flow_L_per_min()) + " L/min"));
        add(lines, "Tungsten", c.arc().tungsten());
        add(
                lines,
                "Current",
                (c.arc().polarity() + range(" ", c.arc().ampsFrom(), c.arc().ampsTo(), " A")).strip());
        add(lines, "Interpass", most(c.heat().mostInterpass_degC(), " °C"));
        add(
                lines,
                "Heat input",
                range("", c.heat().least_kJ_per_mm(), c.heat().most_kJ_per_mm(), " kJ/mm")
                        + (c.heat().samples() == 0
                                ? ""
                                : ", entered for " + c.heat().samples() + " of its nodes"));
        add(lines, "Oxygen before the arc", most(c.nodes().mostPurge_ppm(), " ppm"));
        add(
                lines,
                "Fillet radius",
                range("", c.nodes().filletLeast_mm(), c.nodes().filletMost_mm(), " mm"));
        add(lines, "Repairs of a node", "at most " + c.nodes().mostRepairs());
        add(
                lines,
                "Look",
                c.looks().asked()
                        ? "level " + c.looks().level() + " by " + c.looks().limits()
                                + (c.looks().otherLevels().isBlank()
                                        ? ""
                                        : "; "
                                                + String.join(
                                                        "; ",
                                                        c.looks()
                                                                .otherLevels()
                                                                .lines()
                                                                .toList()))
                        : "");
        return lines;
    }

    private static void add(List<Line> lines, String name, String words) {
        if (!words.isBlank()) {
            lines.add(new Line(name, words));
        }
    }

    private String most(@Nullable BigDecimal figure, String unit) {
        return figure == null ? "" : "at most " + bare(figure) + unit;
    }

    private String range(String before, @Nullable BigDecimal from, @Nullable BigDecimal to, String unit) {
        if (from == null && to == null) {
            return "";
        }
        return before
                + (from == null
                        ? "up to " + bare(to)
                        : to == null ? "from " + bare(from) : bare(from) + " to " + bare(to))
                + unit;
    }

    String bare(@Nullable BigDecimal figure) {
        return figure == null ? "" : formats.number(figure.stripTrailingZeros());
    }
}
