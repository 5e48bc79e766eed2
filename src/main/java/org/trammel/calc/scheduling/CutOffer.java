package org.trammel.calc.scheduling;

import java.util.List;

/**
 * Bars alike, in thousandths of a millimetre.
 *
 * @param stock which entry of the rack
 */
record CutOffer(int stock, long length, boolean remnant, int count, String lot) {

    CutOffer times(int other) {
        return new CutOffer(stock, length, remnant, other, lot);
    }

    /** New bars before remnants before all else: two lengths side by side in one figure, each below 2²⁹. */
    long opened() {
        return remnant ? length : length << 29;
    }

    /** A bar and which blanks it is cut into. */
    record Cut(CutOffer offer, List<Integer> blanks) {

        Cut {
            blanks = List.copyOf(blanks);
        }
    }
}
