package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.CureWindow;
import org.trammel.calc.units.Answer;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/**
 * What is entered of the maker's sheet; the fields are those of {@link PowderSheet}.
 *
 * @param least_percent null for what is common practice
 * @param most_percent null for what is common practice
 */
public record NewPowderSheet(
        @Nullable String colour,
        List<Pair> pairs,
        @Nullable BigDecimal energy_kJPerMol,
        @Nullable BigDecimal least_percent,
        @Nullable BigDecimal most_percent,
        @Nullable String source) {

    private static final int MOST_PAIRS = 6;
    private static final int DECIMALS = 2;
    private static final BigDecimal MOST_PERCENT = BigDecimal.valueOf(1000);

    /** As it was typed; what is missing of it is refused. */
    public record Pair(
            @Nullable BigDecimal minutes, @Nullable BigDecimal metal_degC) {}

    public NewPowderSheet {
        pairs = List.copyOf(pairs);
    }

    List<PowderSheet.Pair> checkedPairs(String deed) {
        if (pairs.size() > MOST_PAIRS) {
            throw Refusal.input(
                    "pairs", deed, "It has more than " + MOST_PAIRS + " pairs.", "Enter those of the sheet.");
        }
        return pairs.stream().map(pair -> checked(deed, pair)).toList();
    }

    private static PowderSheet.Pair checked(String deed, Pair pair) {
        if (pair.minutes() == null || pair.metal_degC() == null) {
            throw Refusal.input(
                    "pairs",
                    deed,
                    "A pair is whole only with its minutes and its temperature.",
                    "Enter both as the sheet prints them, of the metal and not of the air in the oven.");
        }
        if (pair.minutes().stripTrailingZeros().scale() > DECIMALS
                || pair.metal_degC().stripTrailingZeros().scale() > 1) {
            throw Refusal.input(
                    "pairs", deed, "A pair has more decimals than are kept.", "Enter it as the sheet prints it.");
        }
        return new PowderSheet.Pair(pair.minutes(), pair.metal_degC());
    }

    BigDecimal least() {
        return least_percent == null ? BigDecimal.valueOf(100 * CureWindow.USUAL_LEAST) : least_percent;
    }

    BigDecimal most() {
        return most_percent == null ? BigDecimal.valueOf(100 * CureWindow.USUAL_MOST) : most_percent;
    }

    String checkedColour(String deed) {
        return TypedText.line("colour", "The colour", deed, colour, 60);
    }

    String checkedSource(String deed) {
        return TypedText.line("source", "The source", deed, source, 400);
    }

    /** Refuses pairs that do not hold together. */
    void requireWindow(String deed, List<PowderSheet.Pair> checked) {
        for (BigDecimal percent : List.of(least(), most())) {
            if (percent.signum() <= 0
                    || percent.compareTo(MOST_PERCENT) > 0
                    || percent.stripTrailingZeros().scale() > DECIMALS) {
                throw Refusal.input(
                        "least",
                        deed,
                        percent.toPlainString() + " % of full cure does not lie above 0 and up to 1000 %.",
                        "Leave both limits empty for 100 and 150 %, which are common practice.");
            }
        }
        if (least().compareTo(most()) >= 0) {
            throw Refusal.input(
                    "most",
                    deed,
                    "The most of " + most().toPlainString() + " % is not above the least of " + least().toPlainString()
                            + " %.",
                    "Enter the window as the sheet says it.");
        }
        if (!checked.isEmpty()
                && PowderSheet.window(checked, energy_kJPerMol, least(), most())
                        instanceof Answer.NotDeterminable<CureWindow> gap) {
            boolean energy = gap.gaps().stream().allMatch(one -> one.input().equals("activation"));
            throw Refusal.input(
                    energy ? "energy" : "pairs",
                    deed,
                    gap.gaps().stream().map(Answer.Gap::words).collect(Collectors.joining(" ")),
                    "Enter the pairs of the sheet; with one pair alone, the energy and where it comes from.");
        }
    }
}
