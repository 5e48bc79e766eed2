package org.trammel.calc.thermal;

import java.io.IOException;
import java.io.Reader;
import java.nio.CharBuffer;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;
import org.trammel.calc.units.DecimalSign;

/**
 * Reads the file of a temperature logger: lines of fields parted by tab, semicolon or comma; figures with decimal comma or
 * point; a byte-order mark, lines before the names, a line of units below them, empty lines and the names coming again
 * are read over. Times are a date and time of day with or without zone, in one column or two, a count from the start, or
 * seconds since 1970.
 *
 * <p>A row is read whole or the file is refused with its line: a field too many or too few, a figure with the other decimal
 * sign, a time that is none, or two rows of one time that differ. Rows that repeat another word for word are left out, rows
 * out of order are put in their place; both are counted. A reading that is empty, a word such as OPEN, or outside
 * {@value #LEAST_DEG_C} to {@value #GREATEST_DEG_C} °C is one that the thermocouple did not give. A last line without its end
 * may be cut: it is read only if its last figure has decimals, as many as the one above.
 *
 * <p>The text is read once and never kept; what is kept are the readings, 4 bytes each, and 12 bytes a row, for at most
 * {@value SampleTable#MOST_ROWS} rows and {@value SampleTable#MOST_READINGS} readings.
 */
public final class LoggerFile {

    /** Below it no thermocouple in an oven is. */
    public static final int LEAST_DEG_C = -80;

    /** Above it stands what loggers write for an open thermocouple; the common types end about there. */
    public static final int GREATEST_DEG_C = 1300;

    /** Columns of temperatures that a file may have. */
    public static final int MOST_CHANNELS = 64;

    private static final int MOST_NOTICES = 40;

    /** A zone lies at most 18 h off, and the clock is set by an hour or two. */
    private static final long AROUND_MS = 20L * 3_600_000;

    private final LogChoices choices;
    private final LogLines lines;
    private final LogLayout layout;
    private final LogTimes times;
    private final LogColumns columns;
    private final LogFigure figure = new LogFigure();
    private final SampleTable table;
    private final List<String> notices = new ArrayList<>();
    private final int[] row;
    private final LogFields fields;
    private final @Nullable String names;
    private final int width;
    private int decimalsAbove;

    private LoggerFile(LogLines lines, List<String> head, LogChoices choices) throws Unread {
        this.lines = lines;
        this.choices = choices;
        layout = new LogLayout(head);
        times = new LogTimes(layout, choices);
        columns = new LogColumns(layout, choices.channels());
        table = new SampleTable(columns.names().size());
        row = new int[columns.names().size()];
        fields = new LogFields(layout.separator);
        names = layout.namesAsWritten();
        width = layout.rowWidth();
        if (layout.headerLine < 0) {
            note("No line names the columns: they are called by their place.");
        }
    }

    /**
     * Reads.
     *
     * @param text of the file; read to its end and not closed
     * @return the samples, or the line and the reason why the file is not read
     * @throws IOException from the reader
     */
    public static Answer<ReadLog> read(Reader text, LogChoices choices) throws IOException {
        LogLines lines = new LogLines(text);
        try {
            List<String> head = new ArrayList<>();
            boolean more = true;
            boolean ended = true;
            while (head.size() < LogLayout.HEAD && (more = lines.next())) {
                head.add(new String(lines.line(), 0, lines.length()));
                ended = lines.ended();
            }
            LoggerFile file = new LoggerFile(lines, head, choices);
            file.readHead(head, ended);
            if (more) {
                file.readRest();
            }
            return Answer.of(file.log());
        } catch (Unread unread) {
            return unread.answer();
        }
    }

    private void readHead(List<String> head, boolean ended) throws Unread {
        for (int line = layout.firstRow; line < head.size(); line++) {
            char[] text = head.get(line).toCharArray();
            take(text, text.length, line + 1L, line < head.size() - 1 || ended);
        }
    }

    private void readRest() throws IOException, Unread {
        while (lines.next()) {
            take(lines.line(), lines.length(), lines.number(), lines.ended());
        }
    }

    private void take(char[] text, int length, long line, boolean ended) throws Unread {
        if (names != null
                && length == names.length()
                && text[0] == names.charAt(0)
                && names.contentEquals(CharBuffer.wrap(text, 0, length))) {
            note("Line " + line + " names the columns once more.");
            return;
        }
        fields.split(text, length, line);
        if (fields.count() == 0) {
            return;
        }
        if (!ended && cut()) {
            note("Line " + line + " is the last and has no end: it may be cut and was left out.");
            return;
        }
        if (fields.count() > layout.width()) {
            throw new Unread(line, layout.widerThanNames(fields.count()));
        }
        if (fields.written() != width) {
            throw new Unread(
                    line, "The line has " + fields.written() + " fields and the other rows have " + width + ".");
        }
        long time = times.of(fields, line);
        columns.read(fields, figure, row, line, notices.size() < MOST_NOTICES ? this::note : null);
        decimalsAbove = figure.decimals();
        if (near(time)) {
            table.add(time, row, line);
        } else {
            table.leftOut();
        }
    }

    /** Whether a last line without its end may have lost some of it. */
    private boolean cut() {
        int last = fields.count() - 1;
        if (fields.written() != width || fields.written() != fields.count()) {
            return true;
        }
        LogFigure shown = new LogFigure();
        long value = shown.thousandths(fields.line(), fields.from(last), fields.to(last));
        return value <= LogFigure.MISSING || shown.decimals() == 0 || shown.decimals() != decimalsAbove;
    }

    private boolean near(long time_ms) {
        long around = times.inUtc() ? 0 : AROUND_MS;
        return (choices.from() == null || time_ms >= choices.from().toEpochMilli() - around)
                && (choices.until() == null || time_ms <= choices.until().toEpochMilli() + around);
    }

    private void note(String words) {
        if (notices.size() < MOST_NOTICES) {
            notices.add(words);
        } else if (notices.size() == MOST_NOTICES) {
            notices.add("There is more of the kind, which is not listed.");
        }
    }

    private ReadLog log() throws Unread {
        Samples samples = table.samples(columns.names(), times.inUtc() ? null : choices.zone(), choices);
        DecimalSign sign = figure.decimalSign() == ',' ? DecimalSign.COMMA : DecimalSign.POINT;
        return new ReadLog(
                samples,
                new HowRead(
                        layout.separator,
                        sign,
                        times.words(),
                        layout.headerLine + 1L,
                        columns.shown(samples),
                        samples.rows(),
                        table.duplicates(),
                        table.unordered(),
                        table.outside(),
                        notices));
    }
}
