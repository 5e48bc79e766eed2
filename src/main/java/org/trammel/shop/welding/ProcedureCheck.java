package org.trammel.shop.welding;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.materials.Fits;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.materials.MaterialClass;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/** Reads what a procedure asks: a draft may be empty in places, what is put in force may not. */
@Component
class ProcedureCheck {

    private static final BigDecimal THICKEST = BigDecimal.valueOf(50);
    private static final BigDecimal GREATEST = BigDecimal.valueOf(1000);
    private static final int MOST_REPAIRS = 9;
    private static final int MOST_SAMPLES = 30;

    private final WeldProcessRepository processes;
    private final LimitSetRepository limits;
    private final Fits fits;

    ProcedureCheck(WeldProcessRepository processes, LimitSetRepository limits, Fits fits) {
        this.processes = processes;
        this.limits = limits;
        this.fits = fits;
    }

    /** What was typed, tidied; refuses what cannot be, whether draft or not. */
    NewProcedure draft(NewProcedure typed, String deed) {
        if (!NewProcedure.METALS.contains(typed.metal())) {
            throw Refusal.input(
                    "metal",
                    deed,
                    "It is for no metal that the shop knows.",
                    "Choose from " + String.join(", ", NewProcedure.METALS) + ".");
        }
        WeldProcess process = processes
                .findById(typed.process())
                .orElseThrow(() -> Refusal.input(
                        "process", deed, "There is no process " + typed.process() + ".", "Choose one from the list."));
        if (!NewProcedure.JOINTS.containsAll(typed.joints())) {
            throw Refusal.input("joints", deed, "It names a joint that is none.", "BW for butt, FW for fillet welds.");
        }
        GuardedOperations operations = operations(typed.operations(), deed);
        figures(typed, deed);
        knownClasses(typed.arc().fillers(), "fillers", LotKind.FILLER, deed);
        knownClasses(typed.arc().gases(), "gases", LotKind.GAS, deed);
        LookRules looks = looks(typed.looks(), deed);
        return new NewProcedure(
                TypedText.line("what", "What it is", deed, typed.what(), 200),
                typed.metal(),
                process.number(),
                typed.joints(),
                typed.thicknessFrom_mm(),
                typed.thicknessTo_mm(),
                operations,
                new ArcSettings(
                        typed.arc().fillers(),
                        typed.arc().filler_mm(),
                        typed.arc().gases(),
                        typed.arc().flow_L_per_min(),
                        line("tungsten", "The tungsten", deed, typed.arc().tungsten(), 60),
                        line("polarity", "The polarity", deed, typed.arc().polarity(), 20),
                        typed.arc().ampsFrom(),
                        typed.arc().ampsTo()),
                typed.heat(),
                typed.nodes(),
                looks,
                new Papers(
                        line(
                                "welderStandard",
                                "The standard of its welders",
                                deed,
                                typed.papers().welderStandard(),
                                60),
                        line("standard", "The standard", deed, typed.papers().standard(), 60),
                        line("edition", "The edition", deed, typed.papers().edition(), 60),
                        TypedText.line(
                                "source", "The source", deed, typed.papers().source(), 400)));
    }

    private static GuardedOperations operations(GuardedOperations typed, String deed) {
        List<String> all = typed.all().toList();
        all.stream()
                .filter(code -> !code.matches("[A-Za-z0-9][A-Za-z0-9.-]{0,15}"))
                .findFirst()
                .ifPresent(code -> {
                    throw Refusal.input(
                            "weldOperations",
                            deed,
                            code + " is no code of an operation.",
                            "Enter codes such as 060 or 070F.");
                });
        if (all.stream().distinct().count() != all.size()) {
            throw Refusal.input(
                    "weldOperations",
                    deed,
                    "An operation is named twice.",
                    "Name it once: tacked, welded or looked at.");
        }
        return typed;
    }

    private static void figures(NewProcedure typed, String deed) {
        ArcSettings arc = typed.arc();
        HeatRules heat = typed.heat();
        NodeRules nodes = typed.nodes();
        within("thicknessFrom", "The thinnest wall", typed.thicknessFrom_mm(), THICKEST, "mm", deed);
        within("thicknessTo", "The thickest wall", typed.thicknessTo_mm(), THICKEST, "mm", deed);
        ordered("thicknessTo", "walls", typed.thicknessFrom_mm(), typed.thicknessTo_mm(), deed);
        within("fillerMm", "The filler's diameter", arc.filler_mm(), BigDecimal.TEN, "mm", deed);
        within("flow", "The flow of gas", arc.flow_L_per_min(), BigDecimal.valueOf(60), "L/min", deed);
        within("ampsFrom", "The least current", arc.ampsFrom(), GREATEST, "A", deed);
        within("ampsTo", "The greatest current", arc.ampsTo(), GREATEST, "A", deed);
        ordered("ampsTo", "current", arc.ampsFrom(), arc.ampsTo(), deed);
        within("interpass", "The interpass temperature", heat.mostInterpass_degC(), GREATEST, "°C", deed);
        within("heatLeast", "The least heat input", heat.least_kJ_per_mm(), BigDecimal.TEN, "kJ/mm", deed);
        within("heatMost", "The greatest heat input", heat.most_kJ_per_mm(), BigDecimal.TEN, "kJ/mm", deed);
        ordered("heatMost", "heat input", heat.least_kJ_per_mm(), heat.most_kJ_per_mm(), deed);
        within("efficiency", "The efficiency", heat.efficiency(), BigDecimal.ONE, "", deed);
        within("purge", "The oxygen of the purge", nodes.mostPurge_ppm(), BigDecimal.valueOf(10_000), "ppm", deed);
        within("filletLeast", "The least fillet radius", nodes.filletLeast_mm(), BigDecimal.valueOf(50), "mm", deed);
        within("filletMost", "The greatest fillet radius", nodes.filletMost_mm(), BigDecimal.valueOf(50), "mm", deed);
        ordered("filletMost", "fillet radius", nodes.filletLeast_mm(), nodes.filletMost_mm(), deed);
        whole("samples", "The nodes sampled", heat.samples(), MOST_SAMPLES, deed);
        whole("repairs", "The repairs of a node", nodes.mostRepairs(), MOST_REPAIRS, deed);
    }

    private static void within(
            String field, String what, @Nullable BigDecimal value, BigDecimal most, String unit, String deed) {
        if (value != null && (value.signum() <= 0 || value.compareTo(most) > 0 || value.scale() > 4)) {
            throw Refusal.input(
                    field,
                    deed,
                    (what + ", " + value.toPlainString() + " " + unit).strip() + ", does not lie above 0 and up to "
                            + (most.toPlainString() + " " + unit).strip() + ".",
                    "Enter it as the procedure says.");
        }
    }

    private static void ordered(
            String field, String what, @Nullable BigDecimal from, @Nullable BigDecimal to, String deed) {
        if (from != null && to != null && from.compareTo(to) > 0) {
            throw Refusal.input(
                    field,
                    deed,
                    "Its " + what + " would run from " + from.toPlainString() + " to " + to.toPlainString() + ".",
                    "Enter the smaller figure first.");
        }
    }

    private static void whole(String field, String what, int value, int most, String deed) {
        if (value < 0 || value > most) {
            throw Refusal.input(field, deed, what + " would be " + value + ".", "Enter 0 to " + most + ".");
        }
    }

    private void knownClasses(List<String> typed, String field, LotKind kind, String deed) {
        Map<String, MaterialClass> known =
                fits.classes().stream().collect(Collectors.toMap(MaterialClass::code, Function.identity()));
        typed.stream()
                .filter(code -> !known.containsKey(code) || known.get(code).kind() != kind)
                .findFirst()
                .ifPresent(code -> {
                    throw Refusal.input(
                            field,
                            deed,
                            "There is no class " + code + " of " + kind.word() + ".",
                            "Choose from "
                                    + known.values().stream()
                                            .filter(one -> one.kind() == kind)
                                            .map(MaterialClass::code)
                                            .sorted()
                                            .collect(Collectors.joining(", "))
                                    + ".");
                });
    }

    private LookRules looks(LookRules typed, String deed) {
        if (!typed.level().isEmpty() && !LookRules.LEVELS.contains(typed.level())) {
            throw Refusal.input("level", deed, "There is no level " + typed.level() + ".", "Choose B, C or D.");
        }
        typed.otherLevels()
                .lines()
                .filter(line -> !line.isBlank())
                .filter(line -> !line.matches("\\s*[BCD]\\s*:\\s*\\S.*"))
                .findFirst()
                .ifPresent(line -> {
                    throw Refusal.input(
                            "otherLevels",
                            deed,
                            "“" + line.strip() + "” names no level and nodes.",
                            "Write B: head tube, shell.");
                });
        if (!typed.limits().isEmpty() && limits.findByCode(typed.limits()).isEmpty()) {
            throw Refusal.input(
                    "limits", deed, "There is no table of limits " + typed.limits() + ".", "Choose one from the list.");
        }
        return new LookRules(
                typed.level(),
                typed.otherLevels().isBlank()
                        ? ""
                        : TypedText.words("otherLevels", "Nodes of another level", deed, typed.otherLevels(), 1000),
                typed.limits());
    }

    private static String line(String field, String label, String deed, String typed, int longest) {
        return typed.isBlank() ? "" : TypedText.line(field, label, deed, typed, longest);
    }

    /** Refuses a draft that leaves open what a welder must know. */
    void requireWhole(NewProcedure content, String deed) {
        WeldProcess process = processes.findById(content.process()).orElseThrow();
        List<String> missing = new ArrayList<>();
        add(missing, content.joints().isEmpty(), "the joint");
        add(missing, content.thicknessFrom_mm() == null || content.thicknessTo_mm() == null, "the range of walls");
        add(missing, content.operations().weld().isEmpty(), "the operations it welds in");
        add(missing, content.arc().fillers().isEmpty(), "the filler");
        boolean arc = process.arc();
        add(missing, arc && content.arc().gases().isEmpty(), "the gas");
        add(missing, arc && content.arc().flow_L_per_min() == null, "the flow of gas");
        add(missing, arc && content.arc().polarity().isEmpty(), "the polarity");
        add(missing, arc && content.arc().tungsten().isEmpty(), "the tungsten");
        add(missing, arc && (content.arc().ampsFrom() == null || content.arc().ampsTo() == null), "the current");
        boolean heats = content.heat().samples() > 0;
        add(missing, heats && content.heat().efficiency() == null, "the efficiency of the arc");
        add(missing, heats && content.heat().most_kJ_per_mm() == null, "the greatest heat input");
        add(missing, content.looks().asked() && content.looks().limits().isEmpty(), "the table of limits");
        add(missing, content.looks().asked() && content.operations().look().isEmpty(), "where its welds are looked at");
        add(missing, content.papers().welderStandard().isEmpty(), "the standard of its welders");
        add(missing, content.papers().standard().isEmpty(), "the standard");
        add(missing, content.papers().edition().isEmpty(), "the edition");
        if (!missing.isEmpty()) {
            throw Refusal.state(
                    deed, "Open in it: " + String.join(", ", missing) + ".", "Fill it in, as the tests of it say.");
        }
    }

    private static void add(List<String> missing, boolean open, String what) {
        if (open) {
            missing.add(what);
        }
    }
}
