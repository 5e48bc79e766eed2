package org.trammel.shop.materials;

/** Kinds of material that are traced by lot. */
public enum LotKind {
    TUBE("tube", false, true),
    FITTING("shell, dropout or other part that is joined in", false, true),
    FILLER("filler rod", true, false),
    FLUX("flux", true, false),
    GAS("gas", true, false),
    MEDIA("blast media", true, false),
    POWDER("powder", true, false),
    PAINT("paint or thinner", false, false),
    BATH("etch or conversion bath", false, false),
    BEARING("bearing", false, false),
    ADHESIVE("adhesive", false, false),
    COMPONENT("component", false, false);

    private final String word;
    private final boolean classed;
    private final boolean metallic;

    LotKind(String word, boolean classed, boolean metallic) {
        this.word = word;
        this.classed = classed;
        this.metallic = metallic;
    }

    /** The kind in the shop's words. */
    public String word() {
        return word;
    }

    /** Whether work that asks for this kind may take a lot of another. A shell is scanned among the tubes. */
    boolean takes(LotKind other) {
        return this == other || this == TUBE && other == FITTING;
    }

    /** Whether the table of what fits which metal decides over it, so that its class must be known. */
    public boolean classed() {
        return classed;
    }

    /** Whether it becomes part of the frame's own metal, so that the metal must be the frame's. */
    public boolean metallic() {
        return metallic;
    }
}
