package org.trammel.calc.thermal;

import java.time.LocalDate;
import java.time.YearMonth;
import org.jspecify.annotations.Nullable;

/**
 * Reads a date, a time of day and the zone behind it as loggers write them: 2026-03-10T18:00:00+01:00, 10.03.2026 18:00,
 * 3/10/2026 6:00:00 PM, 2026/03/10 18:00:00,5 UTC. Two-digit years are not read: they hide which number is the year.
 */
final class ClockText {

    private static final long DAY_MS = 86_400_000L;

    /** What the text holds. */
    enum Form {
        NOTHING,
        DATE,
        TIME,
        DATE_AND_TIME
    }

    private char[] text = new char[0];
    private int at;
    private int to;

    private int year;
    private int first;
    private int second;
    private boolean yearFirst;
    private char dateSign;
    private long ofDay_ms;
    private boolean secondsShown;
    private boolean zoned;
    private int offset_s;
    private @Nullable String fault;

    private int cachedYear;
    private int cachedMonth;
    private int cachedDay;
    private long cachedEpochDay;

    /** Reads; what is wrong with it, if it looks like a time and is none, is told by {@link #fault}. */
    Form read(char[] chars, int from, int end) {
        text = chars;
        at = from;
        to = end;
        zoned = false;
        fault = null;
        ofDay_ms = 0;
        int start = at;
        boolean date = date();
        if (!date) {
            at = start;
        } else {
            while (at < to && (LogFields.blank(text[at]) || text[at] == 'T' || text[at] == ',')) {
                at++;
            }
            if (at == to) {
                return Form.DATE;
            }
        }
        if (!timeOfDay()) {
            return Form.NOTHING;
        }
        skipBlanks();
        if (at < to && !zone()) {
            return Form.NOTHING;
        }
        return date ? Form.DATE_AND_TIME : Form.TIME;
    }

    private boolean date() {
        int digitsFrom = at;
        int one = whole(4);
        int oneDigits = at - digitsFrom;
        if (oneDigits == 0 || at >= to) {
            return false;
        }
        char sign = text[at];
        if (sign != '-' && sign != '/' && sign != '.') {
            return false;
        }
        at++;
        int two = whole(2);
        if (two < 0 || at >= to || text[at] != sign) {
            return false;
        }
        at++;
        int threeFrom = at;
        int three = whole(4);
        int threeDigits = at - threeFrom;
        if (three < 0) {
            return false;
        }
        dateSign = sign;
        if (oneDigits == 4 && threeDigits <= 2) {
            yearFirst = true;
            year = one;
            first = two;
            second = three;
            return true;
        }
        if (oneDigits <= 2 && threeDigits == 4) {
            yearFirst = false;
            first = one;
            second = two;
            year = three;
            return true;
        }
        fault = "the year does not have four digits";
        return false;
    }

    private boolean timeOfDay() {
        int from = at;
        int hours = whole(4);
        int hourDigits = at - from;
        if (hourDigits == 0 || at >= to || text[at] != ':') {
            return false;
        }
        at++;
        from = at;
        int minutes = whole(2);
        if (at - from != 2 || minutes > 59) {
            return false;
        }
        int seconds = 0;
        long fraction_ms = 0;
        secondsShown = at < to && text[at] == ':';
        if (secondsShown) {
            at++;
            from = at;
            seconds = whole(2);
            if (at - from != 2 || seconds > 59) {
                return false;
            }
            fraction_ms = fraction();
            if (fraction_ms < 0) {
                return false;
            }
        }
        skipBlanks();
        hours = twelveHours(hours);
        if (hours < 0) {
            return false;
        }
        ofDay_ms = ((hours * 60L + minutes) * 60 + seconds) * 1000 + fraction_ms;
        return true;
    }

    private long fraction() {
        if (at >= to || text[at] != '.' && text[at] != ',') {
            return 0;
        }
        at++;
        int from = at;
        long ms = 0;
        int scale = 100;
        while (at < to && text[at] >= '0' && text[at] <= '9') {
            ms += (long) scale * (text[at] - '0');
            scale /= 10;
            at++;
        }
        return at == from || at - from > 9 ? -1 : ms;
    }

    /** With AM or PM behind it twelve is the first hour; below 0 if the hour cannot be. */
    private int twelveHours(int hours) {
        if (at + 1 >= to || text[at + 1] != 'M' && text[at + 1] != 'm') {
            return hours;
        }
        boolean morning = text[at] == 'A' || text[at] == 'a';
        if (!morning && text[at] != 'P' && text[at] != 'p') {
            return hours;
        }
        at += 2;
        skipBlanks();
        if (hours < 1 || hours > 12) {
            return -1;
        }
        return hours % 12 + (morning ? 0 : 12);
    }

    private boolean zone() {
        Integer offset = ZoneText.offset_s(new String(text, at, to - at));
        if (offset == null) {
            fault = "\"" + new String(text, at, Math.min(20, to - at)) + "\" behind the time is no zone that is known";
            return false;
        }
        zoned = true;
        offset_s = offset;
        return true;
    }

    private int whole(int most) {
        int from = at;
        int value = 0;
        while (at < to && at - from < most && text[at] >= '0' && text[at] <= '9') {
            value = value * 10 + text[at++] - '0';
        }
        return at == from ? -1 : value;
    }

    private void skipBlanks() {
        while (at < to && LogFields.blank(text[at])) {
            at++;
        }
    }

    /** Whether the day may stand first or second: a date with the year last and no points. */
    boolean orderOpen() {
        return !yearFirst && dateSign != '.';
    }

    int firstNumber() {
        return first;
    }

    int secondNumber() {
        return second;
    }

    boolean zoned() {
        return zoned;
    }

    int offset_s() {
        return offset_s;
    }

    boolean secondsShown() {
        return secondsShown;
    }

    /** Time of day or, without a date, since a start. */
    long ofDay_ms() {
        return ofDay_ms;
    }

    @Nullable
    String fault() {
        return fault;
    }

    /** Midnight of the date in milliseconds as if it were UTC, or {@link Long#MIN_VALUE} if the calendar has no such day. */
    long midnight_ms(boolean dayFirst) {
        int month = yearFirst || !(dayFirst || dateSign == '.') ? first : second;
        int day = yearFirst || !(dayFirst || dateSign == '.') ? second : first;
        if (year == cachedYear && month == cachedMonth && day == cachedDay) {
            return cachedEpochDay * DAY_MS;
        }
        if (month < 1
                || month > 12
                || day < 1
                || year < 1970
                || year > 2200
                || day > YearMonth.of(year, month).lengthOfMonth()) {
            return Long.MIN_VALUE;
        }
        cachedYear = year;
        cachedMonth = month;
        cachedDay = day;
        cachedEpochDay = LocalDate.of(year, month, day).toEpochDay();
        return cachedEpochDay * DAY_MS;
    }

    /** Whether the time of day lies in a day. */
    boolean inDay() {
        return ofDay_ms < DAY_MS;
    }
}
