package org.trammel.shop.routes;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.trammel.shop.web.Formats;

/** What the codes of a route are called on sheets. Templates know it as {@code @routeWords}. */
@Component("routeWords")
public class RouteWords {

    private static final String NO_BREAK = "\u00a0";
    private static final BigDecimal MINUTES_OF_AN_HOUR = BigDecimal.valueOf(60);

    private final Formats formats;

    RouteWords(Formats formats) {
        this.formats = formats;
    }

    /** What stands at the end of an operation. */
    public String of(Point point) {
        return switch (point) {
            case NONE -> "no gate";
            case HOLD -> "hold point";
            case WITNESS -> "witness point";
        };
    }

    public String of(Signer signer) {
        return switch (signer) {
            case WORKER -> "worker";
            case SECOND -> "second person";
            case ALIGNER -> "aligner";
            case QA -> "QA lead";
            case OWNER -> "owner";
            case HEAT_TREATER -> "heat-treater";
        };
    }

    /** Signers in the order they sign. */
    public String of(List<Signer> signers) {
        return signers.stream().map(this::of).collect(Collectors.joining(", "));
    }

    public String of(Reduction reduction) {
        return switch (reduction) {
            case SINGLE -> "single value";
            case MEAN -> "mean";
            case WORST -> "worst against the limits";
            case SPAN -> "greatest less least";
            case GREATEST -> "greatest";
            case LEAST -> "least";
            case ALL_BUT_FIFTH -> "reached by all but a fifth";
            case ALL_BUT_UNDER_FIFTH -> "reached by all but fewer than a fifth";
            case COAXIAL -> "diameter, twice the distance";
        };
    }

    public String of(Rule rule) {
        return rule == Rule.GUARDED ? "guarded" : "plain";
    }

    public String of(ClockKind kind) {
        return kind == ClockKind.WINDOW ? "window" : "waiting time";
    }

    /** The kind of frame in words: FULL_SUSPENSION is full suspension. */
    public String kind(String kind) {
        String words = kind.toLowerCase(Locale.ROOT).replace('_', ' ');
        return words.replace("tig", "TIG");
    }

    /** The metal in words. */
    public String metal(String metal) {
        return metal.equals("ANY") ? "no frame" : formats.metal(metal);
    }

    /** Nominal and limits with their unit as they are read on a drawing, such as "0 ±0,30°" or "at most 120 °C". */
    public String limits(CharacteristicSheet c) {
        String unit = c.unit().equals("°") ? "°" : NO_BREAK + c.unit();
        return range(c) + unit;
    }

    private String range(CharacteristicSheet c) {
        BigDecimal low = c.lowerDeviation();
        BigDecimal high = c.upperDeviation();
        int decimals = decimals(c);
        BigDecimal base = c.nominal() == null ? BigDecimal.ZERO : c.nominal();
        if (low == null || high == null) {
            BigDecimal side = high == null ? low : high;
            String word = high == null ? "at least " : "at most ";
            if (side == null) {
                return "no limit";
            }
            return c.fromDesign()
                    ? "drawing, " + word + signed(side, decimals)
                    : word + figure(base.add(side), decimals);
        }
        if (!c.fromDesign() && c.nominal() == null) {
            return figure(low, decimals) + " to " + figure(high, decimals);
        }
        String nominal = c.fromDesign() ? "drawing" : figure(base, decimals);
        return low.negate().compareTo(high) == 0
                ? nominal + " ±" + figure(high, decimals)
                : nominal + " " + signed(high, decimals) + "/" + signed(low, decimals);
    }

    private String figure(BigDecimal number, int decimals) {
        return number.signum() == 0 ? "0" : formats.number(number, decimals);
    }

    private String signed(BigDecimal number, int decimals) {
        return number.signum() == 0 ? "0" : formats.signed(number, decimals);
    }

    private static int decimals(CharacteristicSheet c) {
        return Stream.of(c.nominal(), c.lowerDeviation(), c.upperDeviation())
                .filter(Objects::nonNull)
                .mapToInt(BigDecimal::scale)
                .max()
                .orElse(0);
    }

    /** A clock's time: hours where they come out even. */
    public String time(long minutes) {
        return minutes % 60 == 0
                ? formats.number(BigDecimal.valueOf(minutes).divide(MINUTES_OF_AN_HOUR)) + " h"
                : minutes + " min";
    }

    /** What is special about an operation, in words. */
    public List<String> notes(OperationSheet operation) {
        List<String> notes = new ArrayList<>();
        add(notes, operation.qualification() != null, "wants " + operation.qualification());
        add(notes, operation.irreversible(), "cannot be undone");
        add(notes, operation.together(), "several frames at once");
        add(notes, operation.outside(), "may be sent out");
        add(notes, operation.joins(), "joins the parts");
        add(notes, operation.repeatLimit() != null, "repeated " + operation.repeatLimit() + " times at most");
        return notes;
    }

    /** What is special about a step, in words. */
    public List<String> notes(StepSheet step) {
        List<String> notes = new ArrayList<>();
        add(notes, step.lotKind() != null, "scan " + step.lotKind());
        add(notes, step.photo(), "photo");
        add(notes, step.irreversible(), "cannot be undone");
        add(notes, step.startsClock() != null, "starts " + step.startsClock());
        add(notes, step.qualification() != null, "wants " + step.qualification());
        add(
                notes,
                step.proof() != null,
                step.proof() == null ? "" : step.proof().words());
        add(notes, step.secondPerson(), "by somebody who did none of the work");
        return notes;
    }

    /** What is special about a characteristic, in words. */
    public List<String> notes(CharacteristicSheet c) {
        List<String> notes = new ArrayList<>();
        add(
                notes,
                !c.deciding(),
                "information"
                        + (c.triageTolerances() == null
                                ? ""
                                : ", to " + formats.number(c.triageTolerances()) + " tolerances"));
        add(
                notes,
                c.coldSetClock() != null,
                "cold-set in " + c.coldSetClock() + ", " + c.coldSetAttempts() + " attempts");
        add(notes, c.readBack(), "read back blind");
        add(notes, c.secondPerson(), "by two people");
        add(notes, c.sided(), "drive or non-drive");
        return notes;
    }

    private static void add(List<String> notes, boolean holds, String note) {
        if (holds) {
            notes.add(note);
        }
    }

    public Map<Point, String> points() {
        return words(Point.values(), this::of);
    }

    public Map<Signer, String> signers() {
        return words(Signer.values(), this::of);
    }

    public Map<Reduction, String> reductions() {
        return words(Reduction.values(), this::of);
    }

    public Map<Rule, String> rules() {
        return words(Rule.values(), this::of);
    }

    /** What a tick may rest on, nothing first. */
    public Map<String, String> proofs() {
        Map<String, String> proofs = new LinkedHashMap<>();
        proofs.put("", "nothing");
        for (Proof proof : Proof.values()) {
            proofs.put(proof.name(), proof.words());
        }
        return proofs;
    }

    public Map<ClockKind, String> clockKinds() {
        return words(ClockKind.values(), this::of);
    }

    public Map<String, String> metals() {
        Map<String, String> metals = new LinkedHashMap<>();
        Kinds.METALS.forEach(metal -> metals.put(metal, metal(metal)));
        return metals;
    }

    private static <E extends Enum<E>> Map<E, String> words(E[] values, Function<E, String> word) {
        Map<E, String> words = new LinkedHashMap<>();
        for (E value : values) {
            words.put(value, word.apply(value));
        }
        return words;
    }
}
