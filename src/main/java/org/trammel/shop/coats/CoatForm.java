package org.trammel.shop.coats;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.coating.FilmRule;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.web.Keyed;

/** The part of the form of a finish that is about the finished coat. */
final class CoatForm {

    private static final String DEED = "The finish was not put in force.";

    private CoatForm() {}

    /** Null where no operation is named and no rule chosen. */
    static @Nullable CoatAsked asked(Map<String, String> fields) {
        if (text(fields, "filmOperations").isEmpty() && text(fields, "rule").isEmpty()) {
            return null;
        }
        return new CoatAsked(
                NewFinish.words(text(fields, "filmOperations")),
                text(fields, "areas").lines().toList(),
                text(fields, "rule").isEmpty()
                        ? null
                        : Keyed.one(CoatAsked.Rule.class, "rule", DEED, text(fields, "rule")),
                figure(fields, "leastUm"),
                figure(fields, "mostUm"),
                text(fields, "level").isEmpty()
                        ? null
                        : Keyed.one(FilmRule.Level.class, "level", DEED, text(fields, "level")),
                "true".equals(fields.get("strict")),
                "true".equals(fields.get("guarded")),
                crossCut(fields),
                figure(fields, "gloss"),
                figure(fields, "glossWithin"),
                figure(fields, "colour"));
    }

    private static @Nullable Integer crossCut(Map<String, String> fields) {
        BigDecimal typed = figure(fields, "crossCut");
        if (typed == null) {
            return null;
        }
        if (typed.stripTrailingZeros().scale() > 0 || typed.abs().compareTo(BigDecimal.TEN) > 0) {
            throw Refusal.input("crossCut", DEED, "A class of the cross-cut is 0 to 5.", "Enter a whole number.");
        }
        return typed.intValueExact();
    }

    private static @Nullable BigDecimal figure(Map<String, String> fields, String field) {
        return Keyed.figureOrNone(field, DEED, fields.get(field));
    }

    private static String text(Map<String, String> fields, String field) {
        return fields.getOrDefault(field, "").strip();
    }

    static Map<String, String> rules() {
        Map<String, String> rules = new LinkedHashMap<>();
        rules.put("", "the film is not read by a map");
        for (CoatAsked.Rule rule : CoatAsked.Rule.values()) {
            rules.put(rule.name(), rule.word());
        }
        return rules;
    }

    static Map<String, String> levels() {
        Map<String, String> levels = new LinkedHashMap<>();
        levels.put("", "the usual one, 3");
        for (FilmRule.Level level : FilmRule.Level.values()) {
            levels.put(level.name(), String.valueOf(level.ordinal() + 1));
        }
        return levels;
    }

    static void fill(Map<String, Object> values, @Nullable CoatAsked coat) {
        if (coat == null) {
            return;
        }
        values.put("filmOperations", String.join(" ", coat.operations()));
        values.put("areas", String.join("\n", coat.areas()));
        values.put("rule", coat.rule());
        values.put("leastUm", coat.least_um());
        values.put("mostUm", coat.most_um());
        values.put("level", coat.level());
        values.put("strict", coat.strict());
        values.put("guarded", coat.guarded());
        values.put("crossCut", coat.mostCrossCut());
        values.put("gloss", coat.gloss());
        values.put("glossWithin", coat.glossWithin());
        values.put("colour", coat.mostColourDifference());
    }
}
