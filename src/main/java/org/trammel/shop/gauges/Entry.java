package org.trammel.shop.gauges;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/** Reads what was entered of a gauge and refuses what cannot be. */
final class Entry {

    private static final Pattern LABEL = Pattern.compile("[A-Z0-9][A-Z0-9-]{0,18}[A-Z0-9]");
    private static final String NOT = "The gauge was not entered.";

    private static final BigDecimal MOST_ERROR_PERCENT = BigDecimal.valueOf(25);

    private Entry() {}

    static String label(String typed) {
        String code = Gauges.label(typed);
        if (!LABEL.matcher(code).matches()) {
            throw Refusal.input(
                    "code",
                    "The gauge was not registered.",
                    "Its number is letters, digits and dashes, 2 to 20 of them.",
                    "Enter what stands on its label, such as H-12.");
        }
        return code;
    }

    static NewGauge read(NewGauge entry, Set<String> knownKinds) {
        if (entry.ranges().isEmpty()) {
            throw refused("ranges", "It has no range.", "Enter at least one kind and unit it measures.");
        }
        List<GaugeRange> ranges = new ArrayList<>();
        for (GaugeRange range : entry.ranges()) {
            ranges.add(range(range, entry.aid(), knownKinds));
        }

        return new NewGauge(
                TypedText.line("what", "The description", NOT, entry.what(), 200),
                TypedText.lineOrNone("makerNumber", "Maker's number", NOT, entry.makerNumber(), 80),
                orEmpty(TypedText.lineOrNone("location", "Where it is kept", NOT, entry.location(), 120)),
                entry.aid(),
                ranges);
    }

    private static GaugeRange range(GaugeRange range, boolean aid, Set<String> knownKinds) {
        if (!knownKinds.contains(range.kind())) {
            throw refused("kind", "There is no gauge kind " + range.kind() + ".", "Choose a kind from the list.");
        }
        BigDecimal low = range.lowest();
        BigDecimal high = range.highest();
        if (low != null && high != null && low.compareTo(high) >= 0) {
            throw refused(
                    "highest",
                    "Its range ends at " + high.toPlainString() + " and begins at " + low.toPlainString() + ".",
                    "Enter the least value first.");
        }
        bounded("lowest", low);
        bounded("highest", high);
        positive("resolution", range.resolution(), "Its resolution");
        positive("u", range.u(), "Its standard uncertainty");
        positive("uPercent", range.uPercent(), "Its standard uncertainty");
        positive("errorPercent", range.errorPercent(), "Its greatest error");
        if (range.errorPercent() != null && range.errorPercent().compareTo(MOST_ERROR_PERCENT) > 0) {
            throw refused(
                    "errorPercent",
                    "A tool that errs by " + range.errorPercent().toPlainString()
                            + " % of what is set decides nothing.",
                    "Enter it in per cent, at most " + MOST_ERROR_PERCENT + ".");
        }
        if (range.u() != null && range.uPercent() != null) {
            throw refused("u", "u is given both as a figure and in per cent.", "Keep the one its certificate states.");
        }
        boolean stated = range.u() != null || range.uPercent() != null;
        if (aid && stated) {
            throw refused(
                    "u",
                    "It is entered as an aid, which has no uncertainty.",
                    "Leave u empty, or enter it as a gauge.");
        }
        if (!aid && !stated) {
            throw refused(
                    "u",
                    "It has no standard uncertainty, so it could judge nothing.",
                    "Enter u from its certificate, or enter it as an aid for plain yes-or-no use.");
        }
        return new GaugeRange(
                range.kind(),
                Units.plain(needed(!aid, "unit", "Unit", range.unit(), 20)),
                low,
                high,
                range.resolution(),
                range.u(),
                range.uPercent(),
                needed(!aid, "uSource", "Source of u", range.uSource(), 400),
                range.errorPercent());
    }

    private static String needed(boolean needed, String field, String label, String typed, int longest) {
        return needed
                ? TypedText.line(field, label, NOT, typed, longest)
                : orEmpty(TypedText.lineOrNone(field, label, NOT, typed, longest));
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }

    private static void positive(String field, @Nullable BigDecimal number, String what) {
        if (number != null && number.signum() <= 0) {
            throw refused(field, what + " is " + number.toPlainString() + ".", "Enter a figure above 0.");
        }
        bounded(field, number);
    }

    private static void bounded(String field, @Nullable BigDecimal number) {
        if (number != null && !Figures.kept(number)) {
            throw refused(field, Figures.NOT_KEPT, "Look at its unit again.");
        }
    }

    private static Refusal refused(String field, String why, String instead) {
        return Refusal.input(field, NOT, why, instead);
    }
}
