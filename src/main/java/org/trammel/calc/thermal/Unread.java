package org.trammel.calc.thermal;

import org.trammel.calc.units.Answer;

/** Ends the reading of a logger's file; becomes an answer before it leaves the package. */
final class Unread extends Exception {

    private static final long serialVersionUID = 1;

    private final long line;

    /**
     * @param line of the file, from 1; 0 if it is the whole file
     * @param words a sentence
     */
    Unread(long line, String words) {
        super(words, null, false, false);
        this.line = line;
    }

    <T> Answer<T> answer() {
        return line == 0
                ? Answer.none("file", getMessage())
                : Answer.none("line " + line, "Line " + line + ": " + getMessage());
    }
}
