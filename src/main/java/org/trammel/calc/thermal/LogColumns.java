package org.trammel.calc.thermal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** The columns of a logger's file that hold temperatures, and how a row of them is read. */
final class LogColumns {

    private final LogLayout layout;
    private final List<ColumnName> all = new ArrayList<>();
    private final List<HowRead.Content> contents = new ArrayList<>();
    private final List<String> names = new ArrayList<>();
    private final int[] places;
    private final boolean[] fahrenheit;
    private final boolean[] toldOutOfRange;

    LogColumns(LogLayout layout, List<String> wanted) throws Unread {
        this.layout = layout;
        List<Integer> found = new ArrayList<>();
        for (int column = 0; column < layout.width(); column++) {
            ColumnName name = layout.name(column);
            all.add(name);
            boolean temperature = wanted.isEmpty() ? isTemperature(column, name) : wanted.contains(name.name());
            if (column == layout.timeColumn || column == layout.dateColumn) {
                contents.add(HowRead.Content.TIME);
            } else if (temperature) {
                contents.add(name.fahrenheit() ? HowRead.Content.DEG_F : HowRead.Content.DEG_C);
                names.add(name.name());
                found.add(column);
            } else {
                contents.add(HowRead.Content.LEFT_OUT);
            }
        }
        check(wanted);
        places = found.stream().mapToInt(Integer::intValue).toArray();
        fahrenheit = new boolean[places.length];
        toldOutOfRange = new boolean[places.length];
        for (int channel = 0; channel < places.length; channel++) {
            fahrenheit[channel] = contents.get(places[channel]) == HowRead.Content.DEG_F;
        }
    }

    private void check(List<String> wanted) throws Unread {
        long line = Math.max(0, layout.headerLine + 1L);
        for (String name : wanted) {
            if (!names.contains(name)) {
                throw new Unread(
                        line,
                        "No column is called " + name + ": the file has "
                                + String.join(
                                        ", ",
                                        all.stream()
                                                .map(ColumnName::name)
                                                .limit(20)
                                                .toList()) + ".");
            }
        }
        if (names.isEmpty()) {
            throw new Unread(line, "No column holds temperatures.");
        }
        if (names.size() > LoggerFile.MOST_CHANNELS) {
            throw new Unread(line, "More than " + LoggerFile.MOST_CHANNELS + " columns hold temperatures.");
        }
        Set<String> once = new HashSet<>();
        for (String name : names) {
            if (!once.add(name)) {
                throw new Unread(line, "Two columns are called " + name + ".");
            }
        }
        boolean point = false;
        for (int row = layout.firstRow; row < layout.lines.size() && layout.headerLine < 0; row++) {
            point |= layout.separator != ',' || layout.lines.get(row).count() <= 2 || hasPoint(layout.lines.get(row));
        }
        if (layout.headerLine < 0 && !point) {
            throw new Unread(
                    layout.firstRow + 1L,
                    "Commas part whole figures and no line names the columns: they could be decimal commas. Let the logger"
                            + " name its columns or part them by semicolons.");
        }
    }

    private static boolean hasPoint(LogFields fields) {
        for (int column = 1; column < fields.count(); column++) {
            if (fields.text(column).indexOf('.') >= 0) {
                return true;
            }
        }
        return false;
    }

    /** Whether its name does not say otherwise and not all of its first fields are words. */
    private boolean isTemperature(int column, ColumnName name) {
        if (name.otherThanTemperature()) {
            return false;
        }
        LogFigure figure = new LogFigure();
        int words = 0;
        int others = 0;
        for (int row = layout.firstRow; row < layout.lines.size(); row++) {
            LogFields fields = layout.lines.get(row);
            if (column < fields.count() && fields.from(column) < fields.to(column)) {
                figure.forget();
                long value = figure.thousandths(fields.line(), fields.from(column), fields.to(column));
                words += value == LogFigure.NONE ? 1 : 0;
                others += value == LogFigure.NONE ? 0 : 1;
            }
        }
        return others > 0
                || words == 0
                        && layout.headerLine >= 0
                        && !layout.name(column).name().startsWith("column ");
    }

    List<String> names() {
        return names;
    }

    /** Reads the temperatures of a row, in thousandths of a degree Celsius. */
    void read(LogFields fields, LogFigure figure, int[] row, long line, @Nullable Consumer<String> notices)
            throws Unread {
        for (int channel = 0; channel < places.length; channel++) {
            int column = places[channel];
            long value = column >= fields.count()
                    ? LogFigure.MISSING
                    : figure.thousandths(fields.line(), fields.from(column), fields.to(column));
            if (value == LogFigure.NONE) {
                throw new Unread(line, unreadable(fields.text(column), names.get(channel), figure));
            }
            row[channel] = value == LogFigure.MISSING ? Samples.OPEN : celsius(value, channel, line, notices);
        }
    }

    private int celsius(long value, int channel, long line, @Nullable Consumer<String> notices) {
        long degC = fahrenheit[channel] ? Math.round((value - 32_000) * 5 / 9.0) : value;
        if (degC >= LoggerFile.LEAST_DEG_C * 1000L && degC <= LoggerFile.GREATEST_DEG_C * 1000L) {
            return (int) degC;
        }
        if (!toldOutOfRange[channel] && notices != null) {
            toldOutOfRange[channel] = true;
            notices.accept("From line " + line + " on " + names.get(channel)
                    + " shows what no oven has, and was taken as open there.");
        }
        return Samples.OPEN;
    }

    private static String unreadable(String text, String name, LogFigure figure) {
        boolean comma = text.indexOf(',') >= 0;
        boolean point = text.indexOf('.') >= 0;
        String why = comma && point
                ? "has a comma and a point, which can be read two ways."
                : (comma || point) && figure.decimalSign() != 0 && text.matches("[-+\u2212]?\\d+[.,]\\d+")
                        ? "has another decimal sign than the figures above it."
                        : "is no temperature.";
        return "\"" + LogLayout.shown(text) + "\" of " + name + " " + why;
    }

    /** Every column, for who looks at how the file was read. */
    List<HowRead.Column> shown(Samples samples) {
        List<HowRead.Column> shown = new ArrayList<>();
        int channel = 0;
        for (int column = 0; column < all.size(); column++) {
            HowRead.Content content = contents.get(column);
            int open = 0;
            if (content == HowRead.Content.DEG_C || content == HowRead.Content.DEG_F) {
                for (int row = 0; row < samples.rows(); row++) {
                    open += samples.has(channel, row) ? 0 : 1;
                }
                channel++;
            }
            shown.add(new HowRead.Column(all.get(column).name(), content, open));
        }
        return shown;
    }
}
