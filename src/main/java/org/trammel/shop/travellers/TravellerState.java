package org.trammel.shop.travellers;

/** Where a frame, a part of one or a station check stands as a whole. Holds, loops and concessions are told apart. */
public enum TravellerState {
    RELEASED("released"),
    IN_WORK("in work"),
    /** Every operation is done; a frame may be shipped, a part may be joined. */
    FINISHED("ready"),
    SHIPPED("shipped"),
    SCRAPPED("scrapped"),
    /** A newer revision took its place. */
    WITHDRAWN("withdrawn");

    private final String word;

    TravellerState(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** True while work may still be recorded on it. */
    public boolean open() {
        return this == RELEASED || this == IN_WORK || this == FINISHED;
    }
}
