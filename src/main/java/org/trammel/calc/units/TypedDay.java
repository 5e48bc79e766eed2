package org.trammel.calc.units;

import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import org.jspecify.annotations.Nullable;

/**
 * A day as somebody typed or chose it: year, month and day as in 2026-03-18 (ISO 8601, the form in which browsers send
 * a chosen day). Days outside {@link #FIRST} to {@link #LAST} are refused: no lot, gauge, person or promise of a
 * workshop has one, but a slip of the hand in the year does. The two are our own trade judgement.
 */
public sealed interface TypedDay {

    LocalDate FIRST = LocalDate.of(1950, Month.JANUARY, 1);

    LocalDate LAST = LocalDate.of(2149, Month.DECEMBER, 31);

    /** The day. */
    record Read(LocalDate day) implements TypedDay {}

    /** What was typed is no day a shop can mean. */
    record Unreadable(String reason) implements TypedDay {}

    /**
     * Reads what was typed.
     *
     * @param typed the text of the field; null stands for a field that was not sent
     */
    static TypedDay of(@Nullable String typed) {
        String text = typed == null ? "" : typed.strip();
        if (text.isEmpty()) {
            return new Unreadable("A day is missing.");
        }
        try {
            return of(LocalDate.parse(text));
        } catch (DateTimeParseException e) {
            return new Unreadable(why(text));
        }
    }

    private static String why(String text) {
        if (!text.matches("\\d{4}-\\d{2}-\\d{2}")) {
            return "There is no such day. It is written as 2026-03-18, year, month, day.";
        }
        int month = Integer.parseInt(text.substring(5, 7));
        if (month < 1 || month > 12) {
            return "There is no such day: a year has no month " + text.substring(5, 7) + ".";
        }
        YearMonth of = YearMonth.of(Integer.parseInt(text.substring(0, 4)), month);
        return "There is no such day: that month has " + of.lengthOfMonth() + " days.";
    }

    /** Whether a shop can mean the day. */
    static TypedDay of(LocalDate day) {
        if (day.isBefore(FIRST) || day.isAfter(LAST)) {
            return new Unreadable("The year " + day.getYear() + " is not between " + FIRST.getYear() + " and "
                    + LAST.getYear() + ".");
        }
        return new Read(day);
    }
}
