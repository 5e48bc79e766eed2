package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.TypedNumber;
import org.trammel.shop.web.TypedFields;

/** Reads the forms of a draft. */
final class DesignForms {

    private static final int COLUMNS = 4;

    private DesignForms() {}

    static DesignDraft draft(TypedFields fields) {
        Map<GeometryInput, BigDecimal> geometry = new EnumMap<>(GeometryInput.class);
        for (GeometryInput input : GeometryInput.values()) {
            BigDecimal amount = fields.figureOrNone("geometry." + input.code());
            if (amount != null) {
                geometry.put(input, amount);
            }
        }
        return new DesignDraft(
                fields.text("description"),
                fields.text("metal"),
                fields.text("kind"),
                fields.idOrNone("route"),
                fields.text("testFamily"),
                ComponentLines.read(fields, "components"),
                geometry,
                fields.confirmed());
    }

    /** What the list's own fields and the pasted lines give, and what they take away. */
    record Nominals(Map<String, Nominal> given, Set<String> dropped) {}

    static Nominals nominals(TypedFields fields, List<CharacteristicLine> lines, Map<String, Nominal> before) {
        Map<String, Nominal> given = new LinkedHashMap<>();
        Set<String> dropped = new HashSet<>();
        for (CharacteristicLine line : lines) {
            Nominal typed = typed(fields, line.code());
            Nominal known = before.get(line.code());
            if (typed != null && !same(typed, known)) {
                given.put(line.code(), typed);
            } else if (typed == null && known != null && emptied(fields, line.code())) {
                dropped.add(line.code());
            }
        }
        pasted(fields).forEach((code, nominal) -> {
            given.put(code, nominal);
            dropped.remove(code);
        });
        return new Nominals(given, dropped);
    }

    private static boolean emptied(TypedFields fields, String code) {
        return fields.sent("nominal." + code) && !fields.has("nominal." + code);
    }

    private static @Nullable Nominal typed(TypedFields fields, String code) {
        BigDecimal nominal = fields.figureOrNone("nominal." + code);
        BigDecimal lower = fields.figureOrNone("lower." + code);
        BigDecimal upper = fields.figureOrNone("upper." + code);
        if (nominal == null) {
            if ((lower != null || upper != null) && !fields.has("nominal." + code)) {
                fields.wrong("nominal." + code, "Own limits were typed without a nominal.", "Type the nominal too.");
            }
            return null;
        }
        return new Nominal(nominal, lower, upper, lower != null || upper != null);
    }

    private static boolean same(Nominal typed, @Nullable Nominal known) {
        return known != null && typed.plain().equals(known.plain());
    }

    /** Lines such as "080-7; 65,5" or, with own limits, "080-7; 65,5; -0,2; 0,2"; a tab parts columns too. */
    private static Map<String, Nominal> pasted(TypedFields fields) {
        Map<String, Nominal> given = new LinkedHashMap<>();
        int number = 0;
        for (String line : fields.text("paste").lines().toList()) {
            number++;
            if (line.isBlank()) {
                continue;
            }
            String[] cells = line.split("[;\\t]", -1);
            if (cells.length < 2 || cells.length > COLUMNS) {
                fields.wrong(
                        "paste",
                        "Line " + number + " has " + cells.length + " columns.",
                        "Give id and nominal, and if the design has limits of its own the lower and upper deviation.");
                continue;
            }
            BigDecimal nominal = cell(fields, number, cells[1]);
            BigDecimal lower = cells.length > 2 ? cell(fields, number, cells[2]) : null;
            BigDecimal upper = cells.length > 3 ? cell(fields, number, cells[3]) : null;
            String code = cells[0].strip();
            if (nominal == null) {
                fields.wrong("paste", "Line " + number + " has no nominal.", "Type it after the id.");
            } else if (given.put(code, new Nominal(nominal, lower, upper, lower != null || upper != null)) != null) {
                fields.wrong("paste", "Line " + number + " gives " + code + " a second time.", "Leave one of them.");
            }
        }
        return given;
    }

    private static @Nullable BigDecimal cell(TypedFields fields, int number, String cell) {
        if (cell.isBlank()) {
            return null;
        }
        TypedNumber read = TypedNumber.of(cell);
        if (read instanceof TypedNumber.Read figure) {
            return figure.value();
        }
        fields.wrong(
                "paste",
                "Line " + number + ": " + ((TypedNumber.Unreadable) read).reason(),
                "Correct the line and paste again; nothing was taken.");
        return null;
    }
}
