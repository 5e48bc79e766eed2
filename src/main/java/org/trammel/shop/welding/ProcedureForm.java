package org.trammel.shop.welding;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.web.Keyed;

/** The form of a procedure: what was typed, and what stands in it when the next revision is drafted. */
final class ProcedureForm {

    private static final String DEED = "The procedure was not drafted.";

    private ProcedureForm() {}

    static NewProcedure read(Map<String, String> fields) {
        return new NewProcedure(
                text(fields, "what"),
                text(fields, "metal"),
                text(fields, "process"),
                NewProcedure.JOINTS.stream()
                        .filter(joint -> "true".equals(fields.get("joint" + joint)))
                        .toList(),
                figure(fields, "thicknessFrom"),
                figure(fields, "thicknessTo"),
                new GuardedOperations(
                        words(fields, "tackOperations"),
                        words(fields, "weldOperations"),
                        words(fields, "lookOperations")),
                new ArcSettings(
                        codes(fields, "fillers"),
                        figure(fields, "fillerMm"),
                        codes(fields, "gases"),
                        figure(fields, "flow"),
                        text(fields, "tungsten"),
                        text(fields, "polarity"),
                        figure(fields, "ampsFrom"),
                        figure(fields, "ampsTo")),
                new HeatRules(
                        figure(fields, "interpass"),
                        figure(fields, "heatLeast"),
                        figure(fields, "heatMost"),
                        figure(fields, "efficiency"),
                        whole(fields, "samples", 0)),
                new NodeRules(
                        figure(fields, "purge"),
                        figure(fields, "filletLeast"),
                        figure(fields, "filletMost"),
                        "true".equals(fields.get("colours")),
                        "true".equals(fields.get("photos")),
                        whole(fields, "repairs", 2)),
                new LookRules(text(fields, "level"), text(fields, "otherLevels"), text(fields, "limits")),
                new Papers(
                        text(fields, "welderStandard"),
                        text(fields, "standard"),
                        text(fields, "edition"),
                        text(fields, "source")));
    }

    static Map<String, Object> values(@Nullable Procedure last) {
        Map<String, Object> values = new HashMap<>();
        if (last == null) {
            return values;
        }
        NewProcedure c = last.content();
        values.put("what", c.what());
        values.put("metal", c.metal());
        values.put("process", c.process());
        c.joints().forEach(joint -> values.put("joint" + joint, true));
        values.put("thicknessFrom", c.thicknessFrom_mm());
        values.put("thicknessTo", c.thicknessTo_mm());
        values.put("tackOperations", String.join(" ", c.operations().tack()));
        values.put("weldOperations", String.join(" ", c.operations().weld()));
        values.put("lookOperations", String.join(" ", c.operations().look()));
        values.put("fillers", String.join(" ", c.arc().fillers()));
        values.put("fillerMm", c.arc().filler_mm());
        values.put("gases", String.join(" ", c.arc().gases()));
        values.put("flow", c.arc().flow_L_per_min());
        values.put("tungsten", c.arc().tungsten());
        values.put("polarity", c.arc().polarity());
        values.put("ampsFrom", c.arc().ampsFrom());
        values.put("ampsTo", c.arc().ampsTo());
        values.put("interpass", c.heat().mostInterpass_degC());
        values.put("heatLeast", c.heat().least_kJ_per_mm());
        values.put("heatMost", c.heat().most_kJ_per_mm());
        values.put("efficiency", c.heat().efficiency());
        values.put("samples", c.heat().samples());
        values.put("purge", c.nodes().mostPurge_ppm());
        values.put("filletLeast", c.nodes().filletLeast_mm());
        values.put("filletMost", c.nodes().filletMost_mm());
        values.put("colours", c.nodes().colours());
        values.put("photos", c.nodes().photos());
        values.put("repairs", c.nodes().mostRepairs());
        values.put("level", c.looks().level());
        values.put("otherLevels", c.looks().otherLevels());
        values.put("limits", c.looks().limits());
        values.put("welderStandard", c.papers().welderStandard());
        values.put("standard", c.papers().standard());
        values.put("edition", c.papers().edition());
        values.put("source", c.papers().source());
        return values;
    }

    static Map<String, String> metals(java.util.function.UnaryOperator<String> called) {
        Map<String, String> metals = new LinkedHashMap<>();
        NewProcedure.METALS.forEach(metal -> metals.put(metal, called.apply(metal)));
        return metals;
    }

    static Map<String, String> processes(List<WeldProcess> all) {
        Map<String, String> processes = new LinkedHashMap<>();
        all.forEach(process -> processes.put(process.number(), process.words()));
        return processes;
    }

    static Map<String, String> levels() {
        Map<String, String> levels = new LinkedHashMap<>();
        levels.put("", "no look is recorded here");
        LookRules.LEVELS.forEach(level -> levels.put(level, level));
        return levels;
    }

    static Map<String, String> limits(List<LimitSet> sets) {
        Map<String, String> limits = new LinkedHashMap<>();
        limits.put("", "none");
        sets.forEach(set -> limits.put(set.code(), set.code() + ", " + set.what()));
        return limits;
    }

    private static String text(Map<String, String> fields, String field) {
        return fields.getOrDefault(field, "").strip();
    }

    private static List<String> words(Map<String, String> fields, String field) {
        return Stream.of(text(fields, field).split("[\\s,]+"))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    private static List<String> codes(Map<String, String> fields, String field) {
        return words(fields, field).stream()
                .map(code -> code.toUpperCase(Locale.ROOT))
                .distinct()
                .toList();
    }

    private static @Nullable BigDecimal figure(Map<String, String> fields, String field) {
        return Keyed.figureOrNone(field, DEED, fields.get(field));
    }

    private static int whole(Map<String, String> fields, String field, int none) {
        BigDecimal typed = figure(fields, field);
        if (typed == null) {
            return none;
        }
        if (typed.stripTrailingZeros().scale() > 0 || typed.abs().compareTo(BigDecimal.valueOf(1000)) > 0) {
            throw Refusal.input(field, DEED, "It is no whole number.", "Enter a whole number.");
        }
        return typed.intValueExact();
    }
}
