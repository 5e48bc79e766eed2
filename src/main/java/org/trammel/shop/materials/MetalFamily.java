package org.trammel.shop.materials;

/** Families of metal that must not touch each other's filler, brushes and blast media. */
public enum MetalFamily {
    ALUMINIUM("aluminium"),
    STEEL("steel"),
    TITANIUM("titanium");

    private final String word;

    MetalFamily(String word) {
        this.word = word;
    }

    /** The family in the shop's words. */
    public String word() {
        return word;
    }

    /**
     * Family of a frame's metal.
     *
     * @param metal code of the metal, such as AL6061
     */
    public static MetalFamily of(String metal) {
        return switch (metal) {
            case "AL6061", "AL7005" -> ALUMINIUM;
            case "STEEL" -> STEEL;
            case "TI" -> TITANIUM;
            default -> throw new IllegalArgumentException("No family for the metal " + metal);
        };
    }
}
