package org.trammel.shop.inspection;

/** Why a reading is cleared or is to be measured again. */
enum Ground {
    /** The verdict is the same over the whole span. */
    STANDS("its verdict is the same over the whole span"),
    /** Nothing was judged by it. */
    NOTED("nothing was judged by it"),
    MAY_DIFFER("its verdict may be another within the span"),
    ERROR_UNKNOWN("nobody knows by how much the gauge was wrong"),
    OTHER_UNIT("the gauge's error is known in another unit"),
    HEIGHTS_UNKNOWN("it was computed from other figures, and how the error moves it is not known");

    private final String words;

    Ground(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
