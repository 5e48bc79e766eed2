package org.trammel.calc.thermal;

/** Fields of one line. A field in quotation marks may hold the separator; the marks are taken off, doubled ones become one. */
final class LogFields {

    static final int MOST = 130;

    private final char separator;
    private final int[] from = new int[MOST];
    private final int[] to = new int[MOST];
    private char[] line = new char[0];
    private int count;
    private int written;

    LogFields(char separator) {
        this.separator = separator;
    }

    static LogFields of(char separator, String line) throws Unread {
        LogFields fields = new LogFields(separator);
        fields.split(line.toCharArray(), line.length(), 0);
        return fields;
    }

    /** Splits a line, in place; trailing empty fields do not count. */
    void split(char[] text, int length, long number) throws Unread {
        line = text;
        count = 0;
        int i = 0;
        while (true) {
            if (count == MOST) {
                throw new Unread(number, "The line has more than " + MOST + " fields.");
            }
            i = field(i, length, number);
            count++;
            if (i >= length) {
                break;
            }
            i++;
        }
        written = count;
        while (count > 0 && empty(count - 1)) {
            count--;
        }
    }

    private int field(int start, int length, long number) throws Unread {
        int i = start;
        while (i < length && blank(line[i]) && line[i] != separator) {
            i++;
        }
        if (i < length && line[i] == '"') {
            return quoted(i + 1, length, number);
        }
        from[count] = i;
        while (i < length && line[i] != separator) {
            i++;
        }
        to[count] = trimmed(from[count], i);
        return i;
    }

    private int quoted(int start, int length, long number) throws Unread {
        int write = start;
        from[count] = start;
        int i = start;
        while (true) {
            if (i >= length) {
                throw new Unread(number, "A quotation mark is opened and not closed.");
            }
            char c = line[i++];
            if (c == '"') {
                if (i < length && line[i] == '"') {
                    i++;
                } else {
                    break;
                }
            }
            line[write++] = c;
        }
        while (from[count] < write && blank(line[from[count]])) {
            from[count]++;
        }
        to[count] = trimmed(from[count], write);
        while (i < length && line[i] != separator) {
            if (!blank(line[i++])) {
                throw new Unread(number, "Something follows a closing quotation mark.");
            }
        }
        return i;
    }

    private int trimmed(int start, int end) {
        int e = end;
        while (e > start && blank(line[e - 1])) {
            e--;
        }
        return e;
    }

    static boolean blank(char c) {
        return c == ' ' || c == '\t' || c == '\u00A0' || c == '\u202F' || c == '\u2009';
    }

    /** All fields, trailing empty ones too. */
    int written() {
        return written;
    }

    int count() {
        return count;
    }

    char[] line() {
        return line;
    }

    int from(int field) {
        return from[field];
    }

    int to(int field) {
        return to[field];
    }

    boolean empty(int field) {
        return from[field] >= to[field];
    }

    /** The text of a field; empty beyond the last. */
    String text(int field) {
        return field < count ? new String(line, from[field], Math.max(0, to[field] - from[field])) : "";
    }
}
