package org.trammel.shop.dew;

import org.jspecify.annotations.Nullable;

/** What the metal is to be dry for. */
public enum DewPurpose {
    /** Cold metal sweats, and damp metal welds with pores: it has to be warm too. */
    ARC(
            "prep.margin",
            "prep.metal",
            "may have been damp or cold at the arc",
            "Measure again before it is welded, or look at its welds for pores.",
            "Look at their welds."),
    /** A film over water does not hold. */
    COAT(
            "coat.margin",
            null,
            "may have been damp under the coat",
            "Measure again before it is sprayed, or look at its coat for blisters and cut it to see whether it holds.",
            "Look at their coats.");

    private final String margin;
    private final @Nullable String least;
    private final String mayHaveBeen;
    private final String instead;
    private final String look;

    DewPurpose(String margin, @Nullable String least, String mayHaveBeen, String instead, String look) {
        this.margin = margin;
        this.least = least;
        this.mayHaveBeen = mayHaveBeen;
        this.instead = instead;
        this.look = look;
    }

    /** Setting of the margin that is asked for. */
    String margin() {
        return margin;
    }

    /** Setting of the least temperature of the metal; null where none is asked for. */
    @Nullable
    String least() {
        return least;
    }

    /** What the metal may have been where a meter read wrong. */
    String mayHaveBeen() {
        return mayHaveBeen;
    }

    /** The doubt in a frame that is in the shop, and what to do of it. */
    String doubt() {
        return "the metal " + mayHaveBeen + ". " + instead;
    }

    /** What to do of frames that have left. */
    String look() {
        return look;
    }
}
