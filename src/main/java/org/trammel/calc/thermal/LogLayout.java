package org.trammel.calc.thermal;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How the fields of a logger's file lie, as its first lines show: what parts them, which line names the columns, where
 * the times stand and of which kind they are, which columns hold temperatures.
 */
final class LogLayout {

    /** How many lines are looked at before the first is read. */
    static final int HEAD = 200;

    /** What the times of a file are. */
    enum Times {
        /** Date and time of day in one column. */
        CLOCK,
        /** Date in one column, time of day in another. */
        CLOCK_IN_TWO,
        /** Hours, minutes and seconds since the start. */
        ELAPSED_CLOCK,
        /** A number of seconds, minutes or hours since the start. */
        ELAPSED,
        /** Seconds or milliseconds since 1970. */
        EPOCH
    }

    final char separator;
    final List<LogFields> lines = new ArrayList<>();
    int firstRow = -1;
    int headerLine = -1;
    int unitsLine = -1;
    Times times = Times.CLOCK;
    int timeColumn;
    int dateColumn = -1;

    private final List<String> head;

    LogLayout(List<String> head) throws Unread {
        this.head = head;
        separator = separator(head);
        for (String line : head) {
            LogFields fields = new LogFields(separator);
            fields.split(line.toCharArray(), line.length(), lines.size() + 1);
            lines.add(fields);
        }
        findRows();
        findHeader();
    }

    private static char separator(List<String> head) throws Unread {
        if (!head.isEmpty() && head.get(0).matches("sep=[;,\\t]")) {
            return head.get(0).charAt(4);
        }
        List<String> written = head.stream().filter(line -> !line.isBlank()).toList();
        if (written.isEmpty()) {
            throw new Unread(0, "The file is empty.");
        }
        for (char separator : new char[] {'\t', ';', ','}) {
            long with = written.stream()
                    .filter(line -> line.indexOf(separator) >= 0)
                    .count();
            if (2 * with > written.size()) {
                return separator;
            }
        }
        throw new Unread(
                0, "Most lines have one field only: no tab, semicolon or comma parts a time from a temperature.");
    }

    /** The first line that holds a time and a figure or a word for a missing one. */
    private void findRows() throws Unread {
        ClockText clock = new ClockText();
        LogFigure figure = new LogFigure();
        for (int line = 0; line < lines.size() && firstRow < 0; line++) {
            LogFields fields = lines.get(line);
            for (int column = 0; column < Math.min(6, fields.count()) && firstRow < 0; column++) {
                clockAt(clock, fields, column);
                if (firstRow >= 0) {
                    firstRow = hasFigure(figure, fields) ? line : -1;
                }
            }
        }
        if (firstRow < 0) {
            findCountedRows(figure);
        }
        if (firstRow < 0) {
            throw new Unread(
                    0,
                    "No line holds a time and a temperature"
                            + (head.size() > 1 ? " among the first " + head.size() + "." : "."));
        }
    }

    private void clockAt(ClockText clock, LogFields fields, int column) {
        ClockText.Form form = form(clock, fields, column);
        ClockText.Form next = column + 1 < fields.count() ? form(clock, fields, column + 1) : ClockText.Form.NOTHING;
        timeColumn = column;
        dateColumn = -1;
        if (form == ClockText.Form.DATE_AND_TIME) {
            times = Times.CLOCK;
        } else if (form == ClockText.Form.DATE && next == ClockText.Form.TIME) {
            times = Times.CLOCK_IN_TWO;
            dateColumn = column;
            timeColumn = column + 1;
        } else if (form == ClockText.Form.TIME && next == ClockText.Form.DATE) {
            times = Times.CLOCK_IN_TWO;
            dateColumn = column + 1;
        } else if (form == ClockText.Form.TIME) {
            times = Times.ELAPSED_CLOCK;
        } else {
            return;
        }
        firstRow = 0;
    }

    private boolean hasFigure(LogFigure figure, LogFields fields) {
        for (int column = 0; column < fields.count(); column++) {
            figure.forget();
            if (column != timeColumn
                    && column != dateColumn
                    && fields.from(column) < fields.to(column)
                    && figure.thousandths(fields.line(), fields.from(column), fields.to(column)) != LogFigure.NONE) {
                return true;
            }
        }
        return false;
    }

    /** A file that counts: a line of figures below a line that names one column by a unit of time, or by an epoch. */
    private void findCountedRows(LogFigure figure) throws Unread {
        for (int line = 0; line < lines.size(); line++) {
            LogFields fields = lines.get(line);
            if (fields.count() < 2 || !allFigures(figure, fields)) {
                continue;
            }
            firstRow = line;
            int above = lineAbove(line);
            if (above >= 0) {
                for (int column = 0; column < lines.get(above).count(); column++) {
                    ColumnName name = ColumnName.of(lines.get(above).text(column));
                    int units = lineAbove(above);
                    if (units >= 0 && allUnits(lines.get(above))) {
                        name = ColumnName.of(lines.get(units).text(column))
                                .withUnit(lines.get(above).text(column));
                    }
                    if (name.epoch() || name.elapsed_ms() != null) {
                        times = name.epoch() ? Times.EPOCH : Times.ELAPSED;
                        timeColumn = column;
                        return;
                    }
                }
            }
            if (fields.text(0).matches("1\\d{9}(\\d{3})?")) {
                times = Times.EPOCH;
                timeColumn = 0;
                return;
            }
            throw new Unread(
                    line + 1L,
                    "The line holds figures only, and no name above them says which counts seconds, minutes or hours.");
        }
    }

    private static boolean allFigures(LogFigure figure, LogFields fields) {
        figure.forget();
        for (int column = 0; column < fields.count(); column++) {
            if (figure.thousandths(fields.line(), fields.from(column), fields.to(column)) == LogFigure.NONE) {
                return false;
            }
        }
        return number(figure, fields, 0) || number(figure, fields, 1);
    }

    private static boolean number(LogFigure figure, LogFields fields, int column) {
        figure.forget();
        return figure.thousandths(fields.line(), fields.from(column), fields.to(column)) > LogFigure.MISSING;
    }

    private static ClockText.Form form(ClockText clock, LogFields fields, int column) {
        return clock.read(fields.line(), fields.from(column), fields.to(column));
    }

    private int lineAbove(int line) {
        int above = line - 1;
        while (above >= 0 && lines.get(above).count() == 0) {
            above--;
        }
        return above;
    }

    private void findHeader() throws Unread {
        int above = lineAbove(firstRow);
        if (above < 0 || lines.get(above).count() < 2) {
            return;
        }
        headerLine = above;
        if (allUnits(lines.get(above))) {
            int names = lineAbove(above);
            if (names >= 0 && lines.get(names).count() >= 2) {
                unitsLine = above;
                headerLine = names;
            }
        }
        LogFields header = lines.get(headerLine);
        ClockText clock = new ClockText();
        LogFigure figure = new LogFigure();
        for (int column = 0; column < header.count(); column++) {
            if (!header.text(column).isEmpty()
                    && (number(figure, header, column) || form(clock, header, column) != ClockText.Form.NOTHING)) {
                throw new Unread(
                        headerLine + 1L,
                        "The line is not the names of the columns, as it holds \"" + shown(header.text(column))
                                + "\", and it is no time with temperatures either.");
            }
        }
        if (header.count() < lines.get(firstRow).count()) {
            throw new Unread(firstRow + 1L, widerThanNames(lines.get(firstRow).count()));
        }
    }

    private static boolean allUnits(LogFields fields) {
        for (int column = 0; column < fields.count(); column++) {
            if (!ColumnName.isUnit(fields.text(column))) {
                return false;
            }
        }
        return true;
    }

    /** Why a line with more fields than the first has cannot be read. */
    String widerThanNames(int fields) {
        return "The line has " + fields + " fields and " + (headerLine < 0 ? "the first row " : "the line of names ")
                + lines.get(headerLine < 0 ? firstRow : headerLine).count() + "."
                + (separator == ','
                        ? " Where commas part the fields they cannot be the decimal sign as well: let the logger part"
                                + " the fields by semicolons."
                        : "");
    }

    /** How many fields most rows have, trailing empty ones too. */
    int rowWidth() {
        int[] times = new int[LogFields.MOST + 1];
        int usual = lines.get(firstRow).written();
        for (LogFields row : lines.subList(firstRow, lines.size())) {
            times[row.written()]++;
            usual = row.count() > 0 && times[row.written()] > times[usual] ? row.written() : usual;
        }
        return usual;
    }

    /** How many columns there are. */
    int width() {
        return Math.max(
                lines.get(firstRow).count(),
                headerLine < 0 ? 0 : lines.get(headerLine).count());
    }

    ColumnName name(int column) {
        if (headerLine < 0) {
            return new ColumnName("column " + (column + 1), "");
        }
        ColumnName name = ColumnName.of(lines.get(headerLine).text(column));
        if (unitsLine >= 0) {
            name = name.withUnit(lines.get(unitsLine).text(column));
        }
        return name.name().isEmpty() ? new ColumnName("column " + (column + 1), name.unit()) : name;
    }

    /** The whole name of the column of times, with its unit or zone. */
    String timeName() {
        return headerLine < 0
                ? ""
                : lines.get(headerLine).text(timeColumn)
                        + (dateColumn < 0 ? "" : " " + lines.get(headerLine).text(dateColumn));
    }

    /** The line of names as it is written, which may come again in the middle; null if there is none. */
    @Nullable
    String namesAsWritten() {
        return headerLine < 0 ? null : head.get(headerLine);
    }

    static String shown(String text) {
        return text.length() <= 40 ? text : text.substring(0, 39) + "…";
    }
}
