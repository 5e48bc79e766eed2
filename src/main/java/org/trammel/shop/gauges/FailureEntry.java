package org.trammel.shop.gauges;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/** Reads what was entered of a failure and refuses what cannot be. */
final class FailureEntry {

    private static final String NO_FIGURE =
            "Look at the figure and its unit again, or leave it empty: then nothing is cleared by calculation.";

    private FailureEntry() {}

    static Failure read(GaugeRow row, Failure typed, String not) {
        String note = TypedText.words("note", "Note", not, typed.note());
        BigDecimal error = typed.error();
        if (error != null && typed.unit().isBlank()) {
            throw Refusal.input("unit", not, "The error found has no unit.", "Enter the unit of the error.");
        }
        String unit = TypedText.lineOrNone("unit", "Unit", not, Units.plain(typed.unit()), 20);
        List<GaugeRange> ranges = row.currentRanges().stream()
                .filter(range -> range.unit().equals(unit))
                .toList();
        if (error != null) {
            requireError(row, ranges, error, unit, not);
        }
        if (typed.errorAt() != null) {
            requirePlace(row, ranges, typed.errorAt(), unit, not);
        }
        return new Failure(typed.foundOn(), error, unit == null ? "" : unit, typed.errorAt(), note);
    }

    private static void requireError(
            GaugeRow row, List<GaugeRange> ranges, BigDecimal error, @Nullable String unit, String not) {
        if (error.signum() == 0) {
            throw Refusal.input(
                    "error",
                    not,
                    "An error of 0 is none, and everything read with " + row.code() + " would be cleared by it.",
                    "Enter what it reads too high by, or leave it empty where no figure was found.");
        }
        if (!Figures.kept(error)) {
            throw Refusal.input("error", not, Figures.NOT_KEPT, NO_FIGURE);
        }
        if (!ranges.isEmpty() && ranges.stream().noneMatch(range -> range.mayErrBy(error))) {
            throw Refusal.input(
                    "error",
                    not,
                    "It would be wrong by " + error.abs().toPlainString() + " " + unit + ", more than it measures.",
                    NO_FIGURE);
        }
    }

    private static void requirePlace(
            GaugeRow row, List<GaugeRange> ranges, BigDecimal at, @Nullable String unit, String not) {
        if (!Figures.kept(at)) {
            throw Refusal.input("errorAt", not, Figures.NOT_KEPT, NO_FIGURE);
        }
        if (!ranges.isEmpty() && ranges.stream().noneMatch(range -> range.covers(at))) {
            throw Refusal.input(
                    "errorAt",
                    not,
                    row.code() + " does not reach " + at.toPlainString() + " " + unit + ".",
                    "Enter the value at which it was found wrong, or leave it empty.");
        }
    }
}
