package org.trammel.shop.designs;

/** Letters of revisions: A, B, … Z, AA, AB, … */
final class Letters {

    private static final int LETTERS = 26;

    private Letters() {}

    static String of(int position) {
        StringBuilder letters = new StringBuilder();
        for (int rest = position; rest > 0; rest = (rest - 1) / LETTERS) {
            letters.insert(0, (char) ('A' + (rest - 1) % LETTERS));
        }
        return letters.toString();
    }
}
