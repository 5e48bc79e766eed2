package org.trammel.calc.metrology;

/**
 * Between which lengths of a rear end a reading on the plate can lie at all; wide of what frames have, so that only slips fall
 * outside. Common practice.
 */
public enum PlateLengths {
    /** Pin to pin. */
    CHAINSTAY(200, 900),
    /** The whole distance between both dropouts, beside the axle. */
    GAP(40, 300),
    /** Between the inner faces of the dropouts. */
    AXLE_WIDTH(60, 250);

    private final int least_mm;
    private final int most_mm;

    PlateLengths(int least_mm, int most_mm) {
        this.least_mm = least_mm;
        this.most_mm = most_mm;
    }

    public int least_mm() {
        return least_mm;
    }

    public int most_mm() {
        return most_mm;
    }
}
