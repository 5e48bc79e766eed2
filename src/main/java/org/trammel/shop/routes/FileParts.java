package org.trammel.shop.routes;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Operations, steps, characteristics and clocks as a route file writes them. */
final class FileParts {

    /** Limits nobody has taken over yet say so. */
    private static final String NOT_YET_OWNED = "shop default";

    private FileParts() {}

    static OperationSheet operation(Entry entry) {
        entry.only(Set.of(
                "code",
                "name",
                "station",
                "point",
                "signers",
                "qualified",
                "together",
                "outside",
                "irreversible",
                "joins",
                "repeat",
                "caution",
                "steps",
                "characteristics"));
        return new OperationSheet(
                entry.text("code"),
                entry.text("name"),
                entry.text("station", ""),
                entry.choice("point", Point.class, Point.NONE),
                entry.choices("signers", Signer.class),
                entry.optional("qualified"),
                entry.flag("together", false),
                entry.flag("outside", false),
                entry.flag("irreversible", false),
                entry.flag("joins", false),
                entry.whole("repeat"),
                entry.text("caution", ""),
                entry.entries("steps").stream().map(FileParts::step).toList(),
                entry.entries("characteristics").stream()
                        .map(FileParts::characteristic)
                        .toList());
    }

    static StepSheet step(Entry entry) {
        entry.only(
                Set.of("text", "do", "photo", "irreversible", "lot", "starts", "qualified", "proof", "second-person"));
        return new StepSheet(
                entry.text("text"),
                entry.text("do", ""),
                entry.flag("photo", false),
                entry.flag("irreversible", false),
                entry.optional("lot"),
                entry.optional("starts"),
                entry.optional("qualified"),
                entry.has("proof") ? entry.choice("proof", Proof.class, null) : null,
                entry.flag("second-person", false));
    }

    static CharacteristicSheet characteristic(Entry entry) {
        entry.only(Set.of(
                "code",
                "name",
                "unit",
                "decimals",
                "nominal",
                "lower",
                "upper",
                "gauge",
                "points",
                "reduce",
                "rule",
                "signers",
                "sided",
                "read-back",
                "two-people",
                "deciding",
                "cold-set",
                "attempts",
                "amount",
                "triage",
                "source"));
        boolean fromDesign = "design".equals(entry.optional("nominal"));
        boolean coldSet = entry.has("cold-set") && !"none".equals(entry.optional("cold-set"));
        return new CharacteristicSheet(
                entry.text("code"),
                entry.text("name"),
                entry.text("unit"),
                required(entry, "decimals"),
                fromDesign,
                fromDesign ? null : entry.number("nominal"),
                entry.number("lower"),
                entry.number("upper"),
                entry.text("gauge"),
                points(entry),
                entry.choice("reduce", Reduction.class, Reduction.SINGLE),
                entry.choice("rule", Rule.class, null),
                entry.choices("signers", Signer.class),
                entry.flag("sided", false),
                entry.flag("read-back", false),
                entry.flag("two-people", false),
                entry.flag("deciding", true),
                coldSet ? entry.text("cold-set") : null,
                coldSet ? required(entry, "attempts") : 0,
                entry.number("triage"),
                coldSet ? amount(entry) : null,
                entry.text("source", NOT_YET_OWNED));
    }

    static ClockSheet clock(Entry entry) {
        entry.only(Set.of("code", "name", "kind", "hours", "minutes", "started-by", "gates", "source"));
        BigDecimal hours = entry.number("hours");
        BigDecimal minutes = entry.number("minutes");
        if ((hours == null) == (minutes == null)) {
            throw entry.flaw("hours", "a clock has either hours or minutes");
        }
        BigDecimal all = hours == null ? minutes : hours.multiply(BigDecimal.valueOf(60));
        long whole;
        try {
            whole = all == null ? 0 : all.longValueExact();
        } catch (ArithmeticException e) {
            throw entry.flaw("hours", "a clock runs whole minutes");
        }
        return new ClockSheet(
                entry.text("code"),
                entry.text("name"),
                entry.choice("kind", ClockKind.class, null),
                whole,
                entry.text("started-by"),
                entry.texts("gates"),
                entry.text("source", NOT_YET_OWNED));
    }

    private static List<String> points(Entry entry) {
        List<String> points = entry.texts("points");
        if (points.isEmpty()) {
            throw entry.flaw("points", "points is missing");
        }
        return points;
    }

    private static int required(Entry entry, String key) {
        Integer whole = entry.whole(key);
        if (whole == null) {
            throw entry.flaw(key, key + " is missing");
        }
        return whole;
    }

    private static @Nullable BigDecimal amount(Entry entry) {
        return entry.number("amount");
    }
}
