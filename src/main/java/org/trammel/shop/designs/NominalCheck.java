package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;

/** Whether a nominal can be one of the characteristic it is given to. */
final class NominalCheck {

    private static final int DECIMALS = 4;
    /** Own limits wider than so many times the route's are asked about; our own trade judgement, not a standard's. */
    private static final BigDecimal FAR = BigDecimal.TEN;

    private static final BigDecimal TURN = BigDecimal.valueOf(180);
    private static final BigDecimal LONGEST_MM = BigDecimal.valueOf(3000);
    private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000);

    /** Kinds of gauge that span something: none of them shows a size of nothing or less. */
    private static final Set<String> SPANNING = Set.of("CALLIPER", "LONG-CALLIPER", "WALL", "BORE");

    private NominalCheck() {}

    /**
     * @param before what the design gave until now; null if nothing
     * @param unusual limits far wider than the route's are noted here, unless they were kept before
     */
    static void check(
            CharacteristicList list,
            String deed,
            String code,
            Nominal nominal,
            @Nullable Nominal before,
            Unusual unusual) {
        CharacteristicLine line = list.line(code)
                .orElseThrow(() -> Refusal.input(
                        "nominal." + code,
                        deed,
                        "The route has no characteristic " + code + ".",
                        "Look the id up in the list; a child's ids begin with its part, such as FT/."));
        BigDecimal most = line.unit().equals("°") ? TURN : line.unit().equals("mm") ? LONGEST_MM : MOST;
        range(line, deed, "nominal.", nominal.nominal(), most);
        range(line, deed, "lower.", nominal.lowerDeviation(), most);
        range(line, deed, "upper.", nominal.upperDeviation(), most);
        if (moves(line, nominal)) {
            throw Refusal.input(
                    "nominal." + code,
                    deed,
                    fixed(line, nominal),
                    "Leave it out. Limits of its own may be given around "
                            + withUnit(line, line.fixedAt())
                            + "; another nominal is the route's to say.");
        }
        if (size(line) && nominal.nominal().signum() <= 0) {
            throw Refusal.input(
                    "nominal." + code,
                    deed,
                    code + " " + line.name() + " is a size, read with a "
                            + line.gaugeKind().toLowerCase(Locale.ROOT).replace('-', ' ') + ", and cannot be "
                            + nominal.nominal().toPlainString() + " mm.",
                    "Type it as it is on the drawing, above 0.");
        }
        if (!nominal.overridesLimits()) {
            return;
        }
        BigDecimal lower = nominal.lowerDeviation();
        BigDecimal upper = nominal.upperDeviation();
        if (lower == null && upper == null) {
            throw Refusal.input(
                    "lower." + code,
                    deed,
                    "Both limits of " + code + " would be open, so nothing could be judged.",
                    "Give one of them, or leave the route's limits.");
        }
        if (lower != null && upper != null && lower.compareTo(upper) >= 0) {
            throw Refusal.input(
                    "lower." + code,
                    deed,
                    "The lower deviation of " + code + ", " + lower.toPlainString() + ", is not below the upper, "
                            + upper.toPlainString() + ".",
                    "Type the lower one first; it carries a minus where it is below the nominal.");
        }
        if (before == null || !before.plain().equals(nominal.plain())) {
            noteFar(line, "lower.", "lower", lower, unusual);
            noteFar(line, "upper.", "upper", upper, unusual);
        }
    }

    /** A deviation that was meant as the limit itself, say: 542 for a tube of 42 mm within ± 0,1. */
    private static void noteFar(
            CharacteristicLine line, String field, String word, @Nullable BigDecimal deviation, Unusual unusual) {
        BigDecimal route = Stream.of(line.routeLower(), line.routeUpper())
                .filter(Objects::nonNull)
                .map(BigDecimal::abs)
                .max(Comparator.naturalOrder())
                .orElse(BigDecimal.ZERO);
        if (deviation != null && route.signum() > 0 && deviation.abs().compareTo(route.multiply(FAR)) > 0) {
            unusual.add(
                    field + line.code(),
                    line.code() + " " + line.name() + ": a " + word + " deviation of " + withUnit(line, deviation)
                            + " is more than " + FAR + " times that of the route, " + withUnit(line, route) + ".",
                    "A deviation is counted from the nominal; confirm it if it is meant.");
        }
    }

    /** Whether a design gives a nominal of its own where the route fixes it. */
    static boolean moves(CharacteristicLine line, @Nullable Nominal given) {
        return given != null && !line.fromDesign() && given.nominal().compareTo(line.fixedAt()) != 0;
    }

    static String fixed(CharacteristicLine line, Nominal given) {
        return "The route fixes " + line.code() + " " + line.name() + ": "
                + (line.fixed() == null
                        ? "it has limits and no nominal"
                        : "its nominal is " + withUnit(line, line.fixed()))
                + ". The design gives " + withUnit(line, given.nominal()) + ", which would move its limits.";
    }

    private static String withUnit(CharacteristicLine line, BigDecimal number) {
        return Nominal.plain(number).toPlainString() + (line.unit().equals("°") ? "" : " ") + line.unit();
    }

    /** Left to the design and read with a gauge that spans it, without a side: told from the route alone. */
    private static boolean size(CharacteristicLine line) {
        return line.fromDesign() && line.unit().equals("mm") && !line.sided() && SPANNING.contains(line.gaugeKind());
    }

    private static void range(
            CharacteristicLine line, String deed, String field, @Nullable BigDecimal value, BigDecimal most) {
        if (value == null) {
            return;
        }
        if (Nominal.plain(value).scale() > DECIMALS) {
            throw Refusal.input(
                    field + line.code(),
                    deed,
                    line.code() + " has more than " + DECIMALS + " decimals.",
                    "Round it to what can be made and measured.");
        }
        if (value.abs().compareTo(most) > 0) {
            throw Refusal.input(
                    field + line.code(),
                    deed,
                    line.code() + " " + line.name() + " cannot be " + value.toPlainString() + " " + line.unit() + ".",
                    Stream.of(-1, -2)
                            .map(value::scaleByPowerOfTen)
                            .filter(meant -> meant.abs().compareTo(most) <= 0)
                            .findFirst()
                            .map(meant -> "If " + meant.toPlainString() + " was meant, type that.")
                            .orElse("Look at the drawing and type it again."));
        }
    }

    /** For the log: nominal, lower and upper deviation. */
    static String written(Nominal nominal) {
        Nominal plain = nominal.plain();
        String limits =
                plain.overridesLimits() ? ";" + text(plain.lowerDeviation()) + ";" + text(plain.upperDeviation()) : "";
        return plain.nominal().toPlainString() + limits;
    }

    private static String text(@Nullable BigDecimal number) {
        return number == null ? "" : number.toPlainString();
    }
}
