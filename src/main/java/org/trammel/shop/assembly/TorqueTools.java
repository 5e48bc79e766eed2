package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import org.trammel.calc.fastening.ToolError;
import org.trammel.calc.fastening.TorqueFit;
import org.trammel.shop.gauges.Gauge;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.web.Formats;

/** The tools a bolt is torqued with: in date and within their range, or refused with what would do. */
@Component
class TorqueTools {

    static final String UNIT = "N·m";

    private final Gauges gauges;
    private final Settings settings;
    private final Formats formats;

    TorqueTools(Gauges gauges, Settings settings, Formats formats) {
        this.gauges = gauges;
        this.settings = settings;
        this.formats = formats;
    }

    /** A tool at a torque, with what it may err by there. */
    record Tool(String code, BigDecimal error_percent) {}

    /** @param figures_Nm what it is set to, and what it reached where it did not click there */
    Tool tool(String typed, List<BigDecimal> figures_Nm, String deed) {
        if (typed.isBlank()) {
            throw Refusal.input("gauge", deed, "It is not said with which tool.", "Scan the label on the tool.");
        }
        gauges.keep(List.of(typed));
        String code = gauges.require(typed, FrameComponents.TORQUE, UNIT, List.of(), settings.today())
                .code();
        for (BigDecimal figure : figures_Nm) {
            if (reaching(figure).stream().noneMatch(means -> means.code().equals(code))) {
                throw Refusal.input(
                        "gauge",
                        deed,
                        bare(figure) + " N·m lies outside the range of " + code + ": it goes from " + ranges(code)
                                + " N·m.",
                        instead(figure));
            }
        }
        return new Tool(code, error(code, figures_Nm.get(figures_Nm.size() - 1)));
    }

    /**
     * What a tool may err by at a torque: the figure of its range where the register has one, else that of ISO 6789-1. Where two
     * ranges of it meet, the greater of the two: nobody says which one it was set by.
     */
    private BigDecimal error(String code, BigDecimal set_Nm) {
        return gauges.byCode(code).map(Gauge::ranges).orElse(List.of()).stream()
                .filter(range -> range.kind().equals(FrameComponents.TORQUE) && range.covers(set_Nm))
                .map(range -> range.errorPercent() == null ? ToolError.percent(set_Nm) : range.errorPercent())
                .max(BigDecimal::compareTo)
                .orElse(ToolError.percent(set_Nm));
    }

    /** A tool as it is at another torque. */
    Tool at(String code, BigDecimal torque_Nm) {
        return new Tool(code, error(code, torque_Nm));
    }

    boolean reaches(String code, BigDecimal torque_Nm) {
        return reaching(torque_Nm).stream().anyMatch(means -> means.code().equals(code));
    }

    /** Refuses a target that the tool, with all it may err by, may put outside the band; and says what would do. */
    TorqueFit requireFits(TorqueSheet.Line line, BigDecimal target_Nm, Tool tool, String deed) {
        TorqueFit fit = TorqueFit.of(target_Nm, line.least_Nm(), line.most_Nm(), tool.error_percent());
        if (fit.inside()) {
            return fit;
        }
        String lowered = line.lowered() == null ? "" : " " + line.lowered();
        BigDecimal least = fit.leastTarget_Nm();
        BigDecimal most = fit.mostTarget_Nm();
        throw Refusal.input(
                "target",
                deed,
                "Set to " + bare(target_Nm) + " N·m, " + tool.code() + " may give " + formats.number(fit.low_Nm(), 2)
                        + " to " + formats.number(fit.high_Nm(), 2) + " N·m (± " + bare(tool.error_percent()) + " %); "
                        + bare(line.least_Nm()) + " to " + bare(line.most_Nm()) + " are allowed." + lowered,
                least == null || most == null
                        ? "No target fits with this tool: take one of ± " + bare(fit.errorThatWouldDo_percent())
                                + " % or better."
                        : "Set it to " + bare(least) + " to " + bare(most) + " N·m.");
    }

    /** Names the tools that err least first: of a narrow band they are the ones that fit. */
    private String instead(BigDecimal figure) {
        List<String> others = reaching(figure).stream()
                .map(Means::code)
                .sorted(Comparator.comparing((String code) -> error(code, figure))
                        .thenComparing(Comparator.naturalOrder()))
                .limit(3)
                .toList();
        return others.isEmpty()
                ? "No tool in date reaches it: call the QA lead."
                : "Take " + String.join(" or ", others) + ".";
    }

    private List<Means> reaching(BigDecimal figure) {
        return gauges.reaching(FrameComponents.TORQUE, UNIT, List.of(figure), settings.today())
                .getOrDefault(figure, List.of());
    }

    private String ranges(String code) {
        return String.join(
                " and from ",
                gauges.byCode(code).map(Gauge::ranges).orElse(List.of()).stream()
                        .filter(range -> range.kind().equals(FrameComponents.TORQUE))
                        .map(range -> (range.lowest() == null ? "0" : bare(range.lowest())) + " to "
                                + (range.highest() == null ? "any" : bare(range.highest())))
                        .toList());
    }

    /** Tools in date that reach a torque. */
    Map<String, String> usable(BigDecimal figure_Nm) {
        Map<String, String> usable = new LinkedHashMap<>();
        usable.put("", "choose the one in your hand");
        reaching(figure_Nm)
                .forEach(means ->
                        usable.put(means.code(), means.code() + ", ± " + bare(error(means.code(), figure_Nm)) + " %"));
        return usable;
    }

    String bare(BigDecimal figure) {
        return formats.number(figure.stripTrailingZeros());
    }
}
