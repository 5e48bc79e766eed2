package org.trammel.shop.backtraces;

/** What came of a frame whose run is in doubt. */
public enum TraceResult {
    HARDNESS("hardness was measured"),
    AGED_FURTHER("aged further"),
    OWNER_CONTACTED("owner contacted"),
    DECIDED("decided otherwise");

    private final String word;

    TraceResult(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
