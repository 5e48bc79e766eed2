package org.trammel.shop.records;

/** Makes typed text fit to be kept: what no database or screen can hold is dropped, the words stay. */
final class PlainText {

    private static final char REPLACEMENT = '\uFFFD';

    private PlainText() {}

    /**
     * Without control characters but line ends and tabs, without halves of surrogate pairs, without marks that turn the
     * reading direction, without space at the ends; line ends as a line feed.
     */
    static String of(String typed) {
        StringBuilder text = new StringBuilder(typed.length());
        String lines = typed.replace("\r\n", "\n").replace('\r', '\n');
        for (int i = 0; i < lines.length(); i++) {
            char c = lines.charAt(i);
            if (Character.isHighSurrogate(c)
                    && i + 1 < lines.length()
                    && Character.isLowSurrogate(lines.charAt(i + 1))) {
                text.append(c).append(lines.charAt(++i));
            } else if (Character.isSurrogate(c)) {
                text.append(REPLACEMENT);
            } else if (c == '\n' || c == '\t' || !Character.isISOControl(c) && !turnsDirection(c)) {
                text.append(c);
            }
        }
        return text.toString().strip();
    }

    /** Embeddings, overrides and isolates: they make what follows them read otherwise than it is stored. */
    private static boolean turnsDirection(char c) {
        return c >= '\u202A' && c <= '\u202E' || c >= '\u2066' && c <= '\u2069';
    }
}
