package org.trammel.shop.coats;

/** How a coat is taken off. */
public enum StripMethod {
    CHEMICAL("stripped in a bath"),
    BAKE("baked off"),
    BLAST("blasted off");

    private final String word;

    StripMethod(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** Aged aluminium takes neither the heat of a bake nor the bite of a blast that gets through a whole coat. */
    boolean spares(String metal) {
        return this == CHEMICAL || !metal.startsWith("AL");
    }
}
