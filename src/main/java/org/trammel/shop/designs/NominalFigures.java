package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.DecimalSign;

/** What the nominals of a revision say at the gate: beside those of the drawing, and where the drawing says nothing. */
final class NominalFigures {

    private static final int NAMED = 3;
    private static final int LABEL = 80;
    private static final int WORD = 60;
    private static final String RULE = "none without a decision, common practice";

    private NominalFigures() {}

    /** The counts come first; behind each the first that it counts. */
    static List<CheckFigure> of(
            DesignSheet sheet, List<CharacteristicLine> lines, Map<String, DrawnNominals.FromDrawing> fromDrawing) {
        List<CheckFigure> off = new ArrayList<>();
        List<CheckFigure> apart = new ArrayList<>();
        List<String> byHand = new ArrayList<>();
        for (CharacteristicLine line : lines) {
            DrawnNominals.FromDrawing from = fromDrawing.get(line.code());
            Nominal typed = sheet.nominals().get(line.code());
            if (from == null) {
                if (line.fromDesign() && typed != null) {
                    byHand.add(line.code());
                }
                continue;
            }
            if (typed != null && from.contradicts(typed.nominal())) {
                off.add(CheckFigure.word(
                                label(line),
                                written(typed.nominal(), line.unit()),
                                written(from.value(), line.unit()) + " by the drawing")
                        .from(from.tolerance().source()));
            }
            if (DrawnNominals.excludeEachOther(line, from.tolerance())) {
                apart.add(CheckFigure.word(
                                label(line),
                                "route " + between(line.routeLower(), line.routeUpper(), line.unit()),
                                "class "
                                        + between(
                                                from.tolerance().lower(),
                                                from.tolerance().upper(),
                                                line.unit()))
                        .from(from.tolerance().source()));
            }
        }
        List<CheckFigure> figures = new ArrayList<>();
        add(figures, "typed nominals off the drawing", off, true);
        add(figures, "limits of route and tolerance class that exclude each other", apart, false);
        if (!byHand.isEmpty()) {
            figures.add(
                    CheckFigure.word("typed, of which the drawing says nothing", shortened(named(byHand), WORD), null));
        }
        return figures;
    }

    private static void add(List<CheckFigure> to, String label, List<CheckFigure> counted, boolean always) {
        if (always || !counted.isEmpty()) {
            to.add(CheckFigure.count(label, counted.size(), 0).from(RULE));
            to.addAll(counted.subList(0, Math.min(counted.size(), NAMED)));
        }
    }

    private static String named(List<String> codes) {
        return codes.size() + ": " + codes.stream().collect(Collectors.joining(", "));
    }

    private static String label(CharacteristicLine line) {
        return shortened(line.code() + " " + line.name(), LABEL);
    }

    private static String between(@Nullable BigDecimal lower, @Nullable BigDecimal upper, String unit) {
        return (lower == null ? "open" : written(lower, unit)) + " to "
                + (upper == null ? "open" : written(upper, unit));
    }

    private static String written(BigDecimal number, String unit) {
        return DecimalSign.COMMA.write(Nominal.plain(number)) + (unit.equals("°") ? "" : " ") + unit;
    }

    private static String shortened(String text, int most) {
        return text.length() <= most ? text : text.substring(0, most - 1) + "…";
    }
}
