package org.trammel.shop.gauges;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.TypedNumber;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/** Reads what was entered of a calibration and refuses what cannot be. */
final class CalibrationEntry {

    private static final int MOST_POINTS = 100;
    private static final Pattern BETWEEN = Pattern.compile("[;\\t \\u00a0\\u202f]+");
    private static final String LINE = "Type value, error and permissible error, such as 300; 0.02; 0.03.";

    private CalibrationEntry() {}

    static NewCalibration read(GaugeRow row, NewCalibration typed, String not) {
        List<CalibrationPoint> points = typed.points().stream()
                .sorted(Comparator.comparing(CalibrationPoint::at))
                .toList();
        String unit = points.isEmpty() ? "" : unit(row, typed.unit(), not);
        for (int i = 0; i < points.size(); i++) {
            CalibrationPoint point = points.get(i);
            requirePoint(row, unit, point, not);
            if (i > 0 && points.get(i - 1).at().compareTo(point.at()) == 0) {
                throw refused(
                        not,
                        point.at().toPlainString() + " " + unit + " stands twice.",
                        "Give one error for each value, the greater one where it was read twice.");
            }
        }
        if (typed.putRight() && typed.asLeft().isBlank()) {
            throw Refusal.input(
                    "asLeft",
                    not,
                    "It was put right, and nothing says how it was left.",
                    "Say what was done and what it reads now.");
        }
        return new NewCalibration(
                typed.calibratedOn(),
                typed.dueOn(),
                TypedText.line("certificate", "Certificate", not, typed.certificate(), 200),
                typed.makerNumber(),
                orEmpty(TypedText.wordsOrNone("asFound", "As found", not, typed.asFound())),
                unit,
                points,
                typed.putRight(),
                orEmpty(TypedText.wordsOrNone("asLeft", "As left", not, typed.asLeft())));
    }

    private static String unit(GaugeRow row, String typed, String not) {
        List<String> units =
                row.currentRanges().stream().map(GaugeRange::unit).distinct().toList();
        String unit = typed.isBlank() ? units.get(0) : Units.plain(typed);
        if (unit.isEmpty() || !units.contains(unit)) {
            throw Refusal.input(
                    "pointUnit",
                    not,
                    row.code() + " does not read " + (unit.isEmpty() ? "figures" : unit) + ".",
                    "Give the points in a unit it reads, or say in words what was found.");
        }
        return unit;
    }

    private static void requirePoint(GaugeRow row, String unit, CalibrationPoint point, String not) {
        if (point.permissible().signum() <= 0) {
            throw refused(
                    not,
                    "The permissible error at " + point.at().toPlainString() + " is "
                            + point.permissible().toPlainString() + ".",
                    "Enter a figure above 0.");
        }
        for (BigDecimal figure : List.of(point.at(), point.error(), point.permissible())) {
            if (!Figures.kept(figure)) {
                throw refused(not, Figures.NOT_KEPT, "Look at the unit again.");
            }
        }
        List<GaugeRange> ranges = row.currentRanges().stream()
                .filter(range -> range.unit().equals(unit))
                .toList();
        if (ranges.stream().noneMatch(range -> range.mayErrBy(point.error()))) {
            throw refused(
                    not,
                    "At " + point.at().toPlainString() + " it would be wrong by "
                            + point.error().abs().toPlainString() + " " + unit + ", more than " + row.code()
                            + " measures.",
                    "Look at the figures and their unit again: an error is what it reads too much, not what it reads.");
        }
        if (ranges.stream().noneMatch(range -> range.covers(point.at()))) {
            throw refused(
                    not,
                    row.code() + " does not reach " + point.at().toPlainString() + " " + unit + ".",
                    "Look at the value and its unit again.");
        }
    }

    /**
     * The points as they were typed or pasted, one a line: value, error, permissible error, with semicolons, tabs or
     * spaces between; the last may be left out where one is the same everywhere, or be in per cent of the value.
     *
     * @param everywhere permissible error of points that give none
     */
    static List<CalibrationPoint> points(String typed, @Nullable BigDecimal everywhere) {
        String not = "The calibration was not recorded.";
        List<CalibrationPoint> points = new ArrayList<>();
        int line = 0;
        for (String one : typed.lines().toList()) {
            line++;
            if (one.isBlank()) {
                continue;
            }
            String[] cells = BETWEEN.split(one.strip().replaceAll("\\s*%", "%"));
            if (cells.length < 2 || cells.length > 3 || cells.length == 2 && everywhere == null) {
                throw refused(not, "Line " + line + " of the points has " + figures(cells.length) + ".", LINE);
            }
            BigDecimal at = figure(line, cells[0], not);
            BigDecimal error = figure(line, cells[1], not);
            points.add(new CalibrationPoint(at, error, permissible(line, at, cells, everywhere, not)));
        }
        if (points.size() > MOST_POINTS) {
            throw refused(
                    not,
                    points.size() + " points were given; " + MOST_POINTS + " are kept at most.",
                    "Give those that bound its error over the range.");
        }
        return points;
    }

    private static String figures(int count) {
        return count == 1 ? "1 figure" : count + " figures";
    }

    private static BigDecimal permissible(
            int line, BigDecimal at, String[] cells, @Nullable BigDecimal everywhere, String not) {
        if (cells.length < 3) {
            return Objects.requireNonNull(everywhere);
        }
        if (!cells[2].endsWith("%")) {
            return figure(line, cells[2], not);
        }
        BigDecimal share = figure(line, cells[2].substring(0, cells[2].length() - 1), not);
        return at.abs().multiply(share).movePointLeft(2).stripTrailingZeros();
    }

    private static BigDecimal figure(int line, String typed, String not) {
        if (TypedNumber.of(typed) instanceof TypedNumber.Read read) {
            return read.value();
        }
        throw refused(not, "Line " + line + " of the points: “" + typed + "” is no figure.", LINE);
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }

    private static Refusal refused(String not, String why, String instead) {
        return Refusal.input("points", not, why, instead);
    }
}
