package org.trammel.shop.ovens;

/** What is tapped at a quench. */
public enum QuenchMark {
    OUT("out of the oven"),
    IN("in the water");

    private final String word;

    QuenchMark(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
