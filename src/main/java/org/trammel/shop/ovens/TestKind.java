package org.trammel.shop.ovens;

/** What was tested of an oven. */
public enum TestKind {
    /** How much its places differ from the set temperature. */
    SURVEY("survey"),
    /** How much too high one of its thermocouples reads. */
    ACCURACY("accuracy test");

    private final String word;

    TestKind(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
