package org.trammel.shop.orders;

/** The side of the front brake's lever, which differs by country and by rider. */
public enum BrakeLever {
    LEFT("left"),
    RIGHT("right"),
    /** A frame sold without brakes. */
    NONE("none");

    private final String word;

    BrakeLever(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
