package org.trammel.calc.thermal;

import java.util.List;
import org.trammel.calc.units.DecimalSign;

/**
 * How a logger's file was read, for whoever looks at it before it is taken.
 *
 * @param separator between the fields: a comma, a semicolon or a tab
 * @param decimalSign of its figures
 * @param times in words, what its times are and whose clock
 * @param headerLine line of the names of the columns, 0 where the file has none
 * @param columns every column and what became of it, in the order of the file
 * @param rows that are kept
 * @param duplicates rows that were there before, word for word, and were left out
 * @param unordered rows that stood behind a later one and were put in their place
 * @param outside rows left out since they lie outside the span that was asked for
 * @param notices sentences on what a reader should know, each with its line where there is one
 */
public record HowRead(
        char separator,
        DecimalSign decimalSign,
        String times,
        long headerLine,
        List<Column> columns,
        int rows,
        int duplicates,
        int unordered,
        int outside,
        List<String> notices) {

    public HowRead {
        columns = List.copyOf(columns);
        notices = List.copyOf(notices);
    }

    /** What a column holds. */
    public enum Content {
        TIME,
        DEG_C,
        /** Turned into degrees Celsius. */
        DEG_F,
        /** Not read. */
        LEFT_OUT
    }

    /**
     * A column of the file.
     *
     * @param name without its unit
     * @param open rows in which it gives no reading
     */
    public record Column(String name, Content content, int open) {}
}
