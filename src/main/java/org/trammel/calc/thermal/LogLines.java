package org.trammel.calc.thermal;

import java.io.IOException;
import java.io.Reader;
import java.util.Arrays;

/** Lines of a text, one at a time in one buffer, so that a file of any size takes no more memory than its longest line. */
final class LogLines {

    static final int LONGEST = 20_000;

    private static final char MARK = '\uFEFF';

    private final Reader in;
    private final char[] block = new char[1 << 16];
    private char[] line = new char[512];
    private int length;
    private int at;
    private int filled;
    private long number;
    private boolean ended;
    private boolean skipFeed;

    LogLines(Reader in) {
        this.in = in;
    }

    /** Goes to the next line; false at the end of the text. */
    boolean next() throws IOException, Unread {
        length = 0;
        ended = false;
        boolean any = false;
        while (true) {
            if (at == filled && !fill()) {
                if (any) {
                    number++;
                }
                return any;
            }
            char c = block[at++];
            if (skipFeed) {
                skipFeed = false;
                if (c == '\n') {
                    continue;
                }
            }
            if (number == 0 && !any && c == MARK) {
                continue;
            }
            any = true;
            if (c == '\n' || c == '\r') {
                skipFeed = c == '\r';
                ended = true;
                number++;
                return true;
            }
            append(c);
        }
    }

    private boolean fill() throws IOException {
        int read;
        do {
            read = in.read(block, 0, block.length);
        } while (read == 0);
        at = 0;
        filled = Math.max(0, read);
        return read > 0;
    }

    private void append(char c) throws Unread {
        if (c == 0) {
            throw new Unread(number + 1, "This is no text: it holds characters that are none.");
        }
        if (length == line.length) {
            if (length >= LONGEST) {
                throw new Unread(number + 1, "The line is longer than " + LONGEST + " characters: this is no record.");
            }
            line = Arrays.copyOf(line, Math.min(LONGEST, 2 * length));
        }
        line[length++] = c;
    }

    char[] line() {
        return line;
    }

    int length() {
        return length;
    }

    /** Number of the line, from 1. */
    long number() {
        return number;
    }

    /** Whether the line has its end, as the last one may not. */
    boolean ended() {
        return ended;
    }
}
