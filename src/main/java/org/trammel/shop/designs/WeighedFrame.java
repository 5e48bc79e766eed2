package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.List;

/**
 * A weighed frame beside what its drawing says it should weigh, uncoated. Masses in grams.
 *
 * @param part what was weighed
 * @param difference_g weighed less expected
 * @param u_g standard uncertainty of the difference, of walls, weld, parts and scale
 * @param limit so many of them a difference may have
 * @param flagged it has more
 * @param causes single causes that come nearest, nearest first; empty where nothing is to be looked for
 */
public record WeighedFrame(
        WeighedPart part,
        double weighed_g,
        double expected_g,
        double expectedU_g,
        double difference_g,
        double u_g,
        double differenceInU,
        BigDecimal limit,
        boolean flagged,
        List<Cause> causes) {

    public WeighedFrame {
        causes = List.copyOf(causes);
    }

    /**
     * One thing gone otherwise than drawn: a place to look, not a finding.
     *
     * @param words what it would be
     * @param change_g what it adds to the frame; below 0 where it takes away
     * @param leftOver_g what of the difference it does not account for
     * @param explains whether that is within the limit
     */
    public record Cause(String words, double change_g, double leftOver_g, boolean explains) {}
}
