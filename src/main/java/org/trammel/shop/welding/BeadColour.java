package org.trammel.shop.welding;

/** Colour of a bead of titanium: what air did to it while it was hot. */
public enum BeadColour {
    SILVER("silver", Meaning.GOES_ON),
    STRAW("light straw", Meaning.GOES_ON),
    BROWN("brown", Meaning.HELD),
    PURPLE("purple", Meaning.HELD),
    BLUE("blue", Meaning.HELD),
    GREY("grey", Meaning.CUT_OUT),
    WHITE("white or flaking", Meaning.CUT_OUT);

    enum Meaning {
        GOES_ON,
        HELD,
        CUT_OUT
    }

    private final String word;
    private final Meaning meaning;

    BeadColour(String word, Meaning meaning) {
        this.word = word;
        this.meaning = meaning;
    }

    public String word() {
        return word;
    }

    Meaning meaning() {
        return meaning;
    }
}
