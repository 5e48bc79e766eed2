package org.trammel.shop.ovens;

/** What became of a frame in a load. */
public enum FrameState {
    LOADED("loaded"),
    TAKEN_OUT("taken out"),
    RELEASED("released"),
    /** Not released with the others: it stays on hold. */
    KEPT("kept back");

    private final String word;

    FrameState(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
