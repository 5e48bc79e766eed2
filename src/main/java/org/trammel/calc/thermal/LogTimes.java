package org.trammel.calc.thermal;

import java.time.ZoneId;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;

/**
 * Turns the times of one file into milliseconds: since 1970 in UTC where the file or its start tells the zone, else as the
 * clock on the wall showed them, for {@link WallClock} to settle once all are read.
 */
final class LogTimes {

    private static final long EPOCH_IN_MS = 100_000_000_000L;

    private static final double MOST_MS = 366 * 86_400_000.0;

    private final LogLayout layout;
    private final LogChoices choices;
    private final ClockText clock = new ClockText();
    private final ClockText day = new ClockText();
    private final LogFigure counted = new LogFigure();
    private final @Nullable Integer named_s;
    private final boolean dayFirst;
    private final long start_ms;
    private final long step_ms;
    private final boolean zonedRows;

    LogTimes(LogLayout layout, LogChoices choices) throws Unread {
        this.layout = layout;
        this.choices = choices;
        named_s = ZoneText.named_s(layout.timeName());
        boolean clockTimes = layout.times == LogLayout.Times.CLOCK || layout.times == LogLayout.Times.CLOCK_IN_TWO;
        dayFirst = clockTimes && dayStandsFirst();
        zonedRows = clockTimes && firstRowIsZoned();
        boolean counts = layout.times == LogLayout.Times.ELAPSED || layout.times == LogLayout.Times.ELAPSED_CLOCK;
        if (counts && choices.start() == null) {
            throw new Unread(0, "The file counts from its start and has no date: say when the record began.");
        }
        start_ms = choices.start() == null ? 0 : choices.start().toEpochMilli();
        Long elapsed = layout.times == LogLayout.Times.ELAPSED
                ? layout.name(layout.timeColumn).elapsed_ms()
                : null;
        step_ms = elapsed == null ? 1000 : elapsed;
        if (!inUtc() && choices.zone() == null) {
            throw new Unread(0, "The times of the file name no zone: say whose clock they are.");
        }
    }

    private boolean dayStandsFirst() throws Unread {
        boolean open = false;
        int line = layout.firstRow;
        boolean overFirst = false;
        boolean overSecond = false;
        for (; line < layout.lines.size(); line++) {
            LogFields fields = layout.lines.get(line);
            int column = layout.dateColumn < 0 ? layout.timeColumn : layout.dateColumn;
            if (column >= fields.count()
                    || clock.read(fields.line(), fields.from(column), fields.to(column)) == ClockText.Form.NOTHING
                    || !clock.orderOpen()) {
                continue;
            }
            open = true;
            overFirst |= clock.firstNumber() > 12;
            overSecond |= clock.secondNumber() > 12;
        }
        if (!open) {
            return true;
        }
        if (overFirst == overSecond) {
            Boolean told = choices.dayFirst();
            if (told == null || overFirst) {
                LogFields fields = layout.lines.get(layout.firstRow);
                throw new Unread(
                        layout.firstRow + 1L,
                        "In "
                                + LogLayout.shown(
                                        fields.text(layout.dateColumn < 0 ? layout.timeColumn : layout.dateColumn))
                                + " day and month can be told either way round: say which comes first.");
            }
            return told;
        }
        return overFirst;
    }

    private boolean firstRowIsZoned() {
        LogFields fields = layout.lines.get(layout.firstRow);
        clock.read(fields.line(), fields.from(layout.timeColumn), fields.to(layout.timeColumn));
        return clock.zoned();
    }

    /** Whether {@link #of} gives times in UTC. */
    boolean inUtc() {
        return zonedRows
                || named_s != null
                || layout.times == LogLayout.Times.ELAPSED
                || layout.times == LogLayout.Times.ELAPSED_CLOCK
                || layout.times == LogLayout.Times.EPOCH;
    }

    /** The time of a row. */
    long of(LogFields fields, long line) throws Unread {
        return switch (layout.times) {
            case CLOCK, CLOCK_IN_TWO -> clockTime(fields, line);
            case ELAPSED_CLOCK -> start_ms + elapsedClock(fields, line);
            case ELAPSED -> start_ms + Math.round(counted(fields, line) / 1000.0 * step_ms);
            case EPOCH -> {
                long thousandths = counted(fields, line);
                yield thousandths / 1000 >= EPOCH_IN_MS ? thousandths / 1000 : thousandths;
            }
        };
    }

    private long clockTime(LogFields fields, long line) throws Unread {
        int column = layout.timeColumn;
        ClockText.Form form = column >= fields.count()
                ? ClockText.Form.NOTHING
                : clock.read(fields.line(), fields.from(column), fields.to(column));
        boolean two = layout.dateColumn >= 0;
        if (form != (two ? ClockText.Form.TIME : ClockText.Form.DATE_AND_TIME) || !clock.inDay()) {
            throw new Unread(line, unreadable(fields, column));
        }
        ClockText dated = clock;
        if (two) {
            dated = day;
            if (layout.dateColumn >= fields.count()
                    || day.read(fields.line(), fields.from(layout.dateColumn), fields.to(layout.dateColumn))
                            != ClockText.Form.DATE) {
                throw new Unread(line, unreadable(fields, layout.dateColumn));
            }
        }
        long midnight_ms = dated.midnight_ms(dayFirst);
        if (midnight_ms == Long.MIN_VALUE) {
            throw new Unread(
                    line,
                    "The calendar has no day " + LogLayout.shown(fields.text(two ? layout.dateColumn : column))
                            + (dated.orderOpen() ? " with the " + (dayFirst ? "day" : "month") + " first." : "."));
        }
        if (clock.zoned() != zonedRows) {
            throw new Unread(
                    line,
                    zonedRows
                            ? "The time names no zone, and those above do."
                            : "The time names a zone, and those above name none.");
        }
        long wall_ms = midnight_ms + clock.ofDay_ms();
        if (zonedRows) {
            return wall_ms - clock.offset_s() * 1000L;
        }
        return named_s == null ? wall_ms : wall_ms - named_s * 1000L;
    }

    private long elapsedClock(LogFields fields, long line) throws Unread {
        int column = layout.timeColumn;
        if (column >= fields.count()
                || clock.read(fields.line(), fields.from(column), fields.to(column)) != ClockText.Form.TIME
                || clock.zoned()) {
            throw new Unread(line, unreadable(fields, column));
        }
        return clock.ofDay_ms();
    }

    /** Thousandths of the number of the row. */
    private long counted(LogFields fields, long line) throws Unread {
        int column = layout.timeColumn;
        long number = column >= fields.count()
                ? LogFigure.NONE
                : counted.thousandths(fields.line(), fields.from(column), fields.to(column));
        if (number <= LogFigure.MISSING || number < 0) {
            throw new Unread(line, unreadable(fields, column));
        }
        if (layout.times == LogLayout.Times.ELAPSED && number / 1000.0 * step_ms > MOST_MS) {
            throw new Unread(line, "\"" + LogLayout.shown(fields.text(column)) + "\" is more time than any run takes.");
        }
        return number;
    }

    private String unreadable(LogFields fields, int column) {
        String fault = clock.fault();
        String text = fields.text(column);
        return text.isEmpty()
                ? "There is no time."
                : "\"" + LogLayout.shown(text) + "\" cannot be read as a time"
                        + (fault == null ? "." : ", as " + fault + ".");
    }

    /** What the times are, in words. */
    String words() {
        String zone = zonedRows
                ? "each with its zone"
                : named_s != null
                        ? "in the zone that the column names, UTC" + ZoneOffset.ofTotalSeconds(named_s)
                        : "by the clock of " + name(choices.zone());
        String order = layout.times != LogLayout.Times.CLOCK && layout.times != LogLayout.Times.CLOCK_IN_TWO
                ? ""
                : orderWords();
        return switch (layout.times) {
            case CLOCK -> "Date and time in one column" + order + ", " + zone + ".";
            case CLOCK_IN_TWO -> "Date and time in two columns" + order + ", " + zone + ".";
            case ELAPSED_CLOCK -> "Hours, minutes and seconds from " + choices.start() + ".";
            case ELAPSED ->
                (step_ms == 1 ? "Milliseconds" : step_ms == 1000 ? "Seconds" : step_ms == 60_000 ? "Minutes" : "Hours")
                        + " from " + choices.start() + ".";
            case EPOCH -> "Seconds or milliseconds since 1970 in UTC.";
        };
    }

    private String orderWords() {
        LogFields fields = layout.lines.get(layout.firstRow);
        int column = layout.dateColumn < 0 ? layout.timeColumn : layout.dateColumn;
        clock.read(fields.line(), fields.from(column), fields.to(column));
        return clock.orderOpen() ? dayFirst ? ", day before month" : ", month before day" : "";
    }

    private static String name(@Nullable ZoneId zone) {
        return zone == null ? "nobody" : zone.getId();
    }
}
