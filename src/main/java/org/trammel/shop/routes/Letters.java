package org.trammel.shop.routes;

/** Letters of revisions: A to Z, then AA, AB and on. */
final class Letters {

    private Letters() {}

    /**
     * The letter of a revision.
     *
     * @param ordinal 1 for the first revision
     */
    static String of(int ordinal) {
        StringBuilder letters = new StringBuilder();
        for (int rest = ordinal; rest > 0; rest = (rest - 1) / 26) {
            letters.insert(0, (char) ('A' + (rest - 1) % 26));
        }
        return letters.toString();
    }
}
