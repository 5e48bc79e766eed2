package org.trammel.shop.gauges;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.TypedNumber;
import org.trammel.shop.records.Refusal;

/** The fields of a study's form as they were typed: a grid, or lines that were pasted. */
record StudyForm(Map<String, String> fields) {

    private static final String NOT = "The study was not entered.";
    private static final String LINE = "Paste one reading a line: part; appraiser; value.";

    /** How large a grid may be. */
    static final int MOST_PARTS = 25;

    static final int MOST_APPRAISERS = 6;
    static final int MOST_TRIALS = 6;

    NewStudy study() {
        String pasted = text("pasted");
        return new NewStudy(text("what"), text("unit"), tolerance(), pasted.isEmpty() ? ofGrid() : pasted(pasted));
    }

    private @Nullable BigDecimal tolerance() {
        return text("tolerance").isEmpty() ? null : figure("tolerance", text("tolerance"), "The tolerance");
    }

    /** Every field of the grid that something stands in; what is missing shows when the study is computed. */
    private List<StudyReading> ofGrid() {
        int parts = count("parts", MOST_PARTS);
        int appraisers = count("appraisers", MOST_APPRAISERS);
        int trials = count("trials", MOST_TRIALS);
        List<StudyReading> readings = new ArrayList<>();
        for (int p = 1; p <= parts; p++) {
            for (int a = 1; a <= appraisers; a++) {
                for (int t = 1; t <= trials; t++) {
                    String field = "v" + p + "-" + a + "-" + t;
                    if (text(field).isEmpty()) {
                        throw Refusal.input(
                                field,
                                NOT,
                                "Part " + p + " by " + who(a) + ", trial " + t + ", is empty.",
                                "Every appraiser measures every part the same number of times.");
                    }
                    readings.add(new StudyReading(
                            String.valueOf(p), who(a), figure(field, text(field), "Part " + p + " by " + who(a))));
                }
            }
        }
        return readings;
    }

    private String who(int appraiser) {
        String typed = text("who" + appraiser);
        if (typed.isEmpty()) {
            throw Refusal.input(
                    "who" + appraiser, NOT, "Appraiser " + appraiser + " has no initials.", "Enter the initials.");
        }
        return typed.toUpperCase(Locale.ROOT);
    }

    /** One reading a line, parted by semicolons or tabs; a heading is passed over, and so are empty lines. */
    static List<StudyReading> pasted(String typed) {
        List<StudyReading> readings = new ArrayList<>();
        int line = 0;
        for (String one : typed.replace("\ufeff", "").lines().toList()) {
            line++;
            if (one.isBlank() || line == 1 && one.toLowerCase(Locale.ROOT).contains("part")) {
                continue;
            }
            String[] cells = one.strip().split("\\s*[;\\t]\\s*", -1);
            if (cells.length != 3) {
                throw Refusal.input("pasted", NOT, "Line " + line + " has " + cells.length + " cells, not 3.", LINE);
            }
            readings.add(new StudyReading(
                    unquoted(cells[0]), unquoted(cells[1]), figure("pasted", unquoted(cells[2]), "Line " + line)));
        }
        return readings;
    }

    private static String unquoted(String cell) {
        return cell.length() > 1 && cell.startsWith("\"") && cell.endsWith("\"")
                ? cell.substring(1, cell.length() - 1).strip()
                : cell;
    }

    int count(String field, int most) {
        try {
            int count = Integer.parseInt(text(field));
            if (count >= 2 && count <= most) {
                return count;
            }
        } catch (NumberFormatException e) {
            // Said below: what is no figure is as wrong as one that is too large.
        }
        throw Refusal.input(
                field,
                "There is no such grid.",
                "It has “" + text(field) + "” " + field + ".",
                "Enter 2 to " + most + ", or paste the readings.");
    }

    private String text(String field) {
        return fields.getOrDefault(field, "").strip();
    }

    private static BigDecimal figure(String field, String typed, String what) {
        TypedNumber number = TypedNumber.of(typed);
        if (number instanceof TypedNumber.Read read) {
            return read.value();
        }
        throw Refusal.input(
                field,
                NOT,
                what + ": " + ((TypedNumber.Unreadable) number).reason(),
                "Type the figure again, without a unit.");
    }
}
