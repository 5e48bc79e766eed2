package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was recorded at an operation in which a frame is joined, ridden or packed; the newest of each.
 *
 * @param joins whether the rules ask for a join here; likewise the others
 * @param missing what the build's record still lacks, where it is packed
 */
public record BuildRecord(
        long operationId,
        BuildRules rules,
        boolean joins,
        boolean rides,
        boolean packs,
        List<String> parts,
        @Nullable Joined joined,
        @Nullable Bedded front,
        @Nullable Bedded rear,
        @Nullable Ridden ridden,
        List<Item> items,
        @Nullable Packed packed,
        List<String> missing) {

    public BuildRecord {
        parts = List.copyOf(parts);
        items = List.copyOf(items);
        missing = List.copyOf(missing);
    }

    /** Which brake. */
    public enum Brake {
        FRONT("front brake"),
        REAR("rear brake");

        private final String word;

        Brake(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** @param parts tags of the parts as they were scanned */
    public record Joined(
            List<String> parts,
            OffsetShares shares,
            BigDecimal rss_mm,
            BigDecimal worst_mm,
            String words,
            long by,
            Instant at) {}

    /**
     * A brake bedded.
     *
     * @param askedStops by the sheet of its pads
     * @param clear whether the lever stays clear of the bar at full pull
     */
    public record Bedded(
            Brake brake,
            int stops,
            BigDecimal kmh,
            int askedStops,
            BigDecimal asked_kmh,
            String source,
            boolean clear,
            long by,
            Instant at) {

        public boolean enough() {
            return clear && stops >= askedStops && kmh.compareTo(asked_kmh) >= 0;
        }
    }

    /** Who rode, and how it went. */
    public record Ridden(long rider, boolean good, String words, Instant at) {}

    /** A thing the country asks for. */
    public record Item(
            String item,
            boolean there,
            @Nullable Long by,
            @Nullable Instant at) {}

    /** Frame, box and paper bore one serial. */
    public record Packed(String serial, long by, Instant at) {}
}
