package org.trammel.shop.handwork;

/** What touches metal between saw and arc. */
public enum ToolKind {
    BRUSH("brush"),
    FILE("file"),
    CLOTH("cloth"),
    CLEANER("cleaner");

    private final String word;

    ToolKind(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
