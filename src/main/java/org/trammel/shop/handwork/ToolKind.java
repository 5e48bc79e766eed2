package org.trammel.shop.handwork;

import java.util.List;
import org.trammel.shop.routes.Proof;

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

    /** Of each group one must have touched the metal before a step may be ticked that rests on this. */
    static List<List<ToolKind>> askedBy(Proof proof) {
        return switch (proof) {
            case CLEANED -> List.of(List.of(CLEANER), List.of(CLOTH));
            case BRUSHED -> List.of(List.of(BRUSH, FILE));
            default -> List.of();
        };
    }
}
