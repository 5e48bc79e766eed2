package org.trammel.shop.gauges;

/** Where a gauge stands. Falling due is no state: it follows from the date. */
public enum GaugeState {
    IN_USE("in use"),
    /** Set aside with a reason; the QA lead lets it be used again. */
    BLOCKED("blocked"),
    /** Found wrong at a calibration; needs another calibration before anyone may unblock it. */
    FAILED("failed"),
    /** Gone for good; its readings keep its code, and are judged again if it is found wrong after all. */
    RETIRED("retired");

    private final String word;

    GaugeState(String word) {
        this.word = word;
    }

    /** The state in the shop's words. */
    public String word() {
        return word;
    }
}
