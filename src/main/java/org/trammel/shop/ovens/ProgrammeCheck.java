package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.Activation;
import org.trammel.calc.thermal.OvenProgramme;
import org.trammel.calc.units.Answer;
import org.trammel.shop.inspection.GivenCodes;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/** Whether a drafted programme holds together; what it is worth is another question. */
final class ProgrammeCheck {

    static final Set<String> METALS = new LinkedHashSet<>(List.of("AL6061", "AL7005", "STEEL", "TI"));

    private static final int MOST_GUARDS = 12;
    private static final BigDecimal LONGEST = BigDecimal.valueOf(10_000);

    /** Fields of the form by the names that the computation gives its inputs. */
    private static final Map<String, String> FIELDS = Map.ofEntries(
            Map.entry("set", "set"),
            Map.entry("below", "below"),
            Map.entry("above", "above"),
            Map.entry("soak", "soak"),
            Map.entry("longestSoak", "longest"),
            Map.entry("overshoot", "overshoot"),
            Map.entry("spread", "spread"),
            Map.entry("steepestRise", "rise"));

    private final Purpose purpose;
    private final String deed;

    ProgrammeCheck(Purpose purpose, String deed) {
        this.purpose = purpose;
        this.deed = deed;
    }

    NewProgramme checked(NewProgramme typed) {
        List<String> metals = metals(typed.metals());
        BigDecimal reference = typed.reference_degC();
        boolean asks = typed.least_h() != null || typed.most_h() != null;
        if (asks && (reference == null || metals.size() != 1)) {
            throw Refusal.input(
                    reference == null ? "reference" : "metals",
                    deed,
                    reference == null
                            ? "Equivalent hours are asked for, and not at which temperature they are counted."
                            : "Equivalent hours are asked for, and they are counted by one metal, not by "
                                    + metals.size() + ".",
                    "Enter one metal and one temperature, or ask for no equivalent hours.");
        }
        NewProgramme read = new NewProgramme(
                TypedText.line("what", "What it is", deed, typed.what(), 200),
                metals,
                guards(typed.guards()),
                typed.steps(),
                typed.never_degC(),
                reference,
                typed.least_h(),
                typed.most_h(),
                notBelow0("naturalAgeing", "The least natural ageing", typed.naturalAgeing_h()),
                notBelow0("quenchDelay", "The longest quench delay", typed.quenchDelay_s()),
                notBelow0("quenchToAge", "The longest time from quench to oven", typed.quenchToAge_h()),
                typed.countsSurvey(),
                TypedText.line("source", "The source of the numbers", deed, typed.source(), 400),
                gives(typed));
        if (computed(read, null) instanceof Answer.NotDeterminable<OvenProgramme> none) {
            Answer.Gap gap = none.gaps().get(0);
            throw Refusal.input(field(gap.input()), deed, gap.words(), "Put it right and send it again.");
        }
        return read;
    }

    /** What the computation asks of a run; equivalent hours only where it is known how to count them. */
    static Answer<OvenProgramme> computed(NewProgramme content, @Nullable Activation activation) {
        BigDecimal reference = content.reference_degC();
        boolean asks = reference != null && (content.least_h() != null || content.most_h() != null);
        Activation by = activation == null ? new Activation(100, 100, 100, "check of the form") : activation;
        return OvenProgramme.of(
                content.steps().stream().map(ProgrammeStep::computed).toList(),
                ProgrammeStep.orNull(content.never_degC()),
                asks
                        ? new OvenProgramme.Worth(
                                reference.doubleValue(),
                                by,
                                ProgrammeStep.orNull(content.least_h()),
                                ProgrammeStep.orNull(content.most_h()))
                        : null);
    }

    private List<String> metals(List<String> typed) {
        Set<String> metals = new LinkedHashSet<>();
        for (String metal : typed) {
            String code = metal.strip().toUpperCase(Locale.ROOT);
            if (!METALS.contains(code)) {
                throw Refusal.input("metals", deed, "No metal is called " + code + ".", "Choose from the list.");
            }
            metals.add(code);
        }
        if (metals.isEmpty()) {
            throw Refusal.input("metals", deed, "It is for no metal.", "Tick the metals that it is for.");
        }
        boolean aged = metals.stream().allMatch(metal -> metal.startsWith("AL"));
        if (purpose.releasedByQa() && (!aged || metals.size() > 1)) {
            throw Refusal.input(
                    "metals",
                    deed,
                    purpose.word().substring(0, 1).toUpperCase(Locale.ROOT)
                            + purpose.word().substring(1) + " is done to one aluminium alloy at a time; named are "
                            + String.join(", ", metals) + ".",
                    "Tick one alloy; steel and titanium frames are not aged.");
        }
        return List.copyOf(metals);
    }

    private List<String> guards(List<String> typed) {
        List<String> guards = new ArrayList<>();
        for (String code : typed) {
            String own = TypedText.line("guards", "The operation", deed, code, 20);
            if (!own.matches("[0-9A-Za-z.]+")) {
                throw Refusal.input(
                        "guards",
                        deed,
                        own + " is no code of an operation.",
                        "Enter codes as the routes have them, such as 110a, parted by spaces.");
            }
            guards.add(own);
        }
        if (guards.size() > MOST_GUARDS) {
            throw Refusal.input(
                    "guards", deed, "It names " + guards.size() + " operations.", "Name " + MOST_GUARDS + " at most.");
        }
        return guards.stream().distinct().toList();
    }

    /** What no record of a run of it could tell, it cannot give. */
    private Map<RunFigure, List<String>> gives(NewProgramme typed) {
        Map<RunFigure, List<String>> gives = GivenCodes.checked(RunFigure.class, deed, typed.gives());
        if (gives.isEmpty()) {
            return gives;
        }
        if (typed.guards().isEmpty()) {
            throw Refusal.input(
                    "guards",
                    deed,
                    "Its runs give characteristics, and it guards no operation that could have them.",
                    "Name the operation, or let it give none.");
        }
        int inBand = gives.getOrDefault(RunFigure.IN_BAND, List.of()).size();
        if (!typed.steps().isEmpty() && inBand % typed.steps().size() != 0) {
            throw Refusal.input(
                    "givesIN_BAND",
                    deed,
                    "It has " + typed.steps().size() + " steps, and the time in band of " + inBand + " is given.",
                    "Enter one code to each step, in their order, and those of a further operation after them.");
        }
        if (gives.containsKey(RunFigure.EQUIVALENT) && !purpose.ages()) {
            throw Refusal.input(
                    "givesEQUIVALENT", deed, "Equivalent hours are counted of an age.", "Leave it empty here.");
        }
        if (gives.containsKey(RunFigure.QUENCH) && typed.quenchDelay_s() == null) {
            throw Refusal.input(
                    "givesQUENCH", deed, "It asks for no quench.", "Enter how long door to water may take at most.");
        }
        return gives;
    }

    private @Nullable BigDecimal notBelow0(String field, String what, @Nullable BigDecimal value) {
        if (value != null && (value.signum() < 0 || value.compareTo(LONGEST) > 0)) {
            throw Refusal.input(
                    field,
                    deed,
                    what + ", " + value.toPlainString() + ", is not from 0 to " + LONGEST + ".",
                    "Enter it again, or leave it empty.");
        }
        return value;
    }

    /** steps[1].soak of the computation is the field soak2 of the form. */
    static String field(String input) {
        if (input.startsWith("steps[")) {
            int at = Integer.parseInt(input.substring(6, input.indexOf(']'))) + 1;
            String last = input.substring(input.lastIndexOf('.') + 1);
            return FIELDS.getOrDefault(last, last) + at;
        }
        return switch (input) {
            case "steps" -> "set1";
            case "worth.reference" -> "reference";
            case "worth.most" -> "most";
            default -> input;
        };
    }
}
