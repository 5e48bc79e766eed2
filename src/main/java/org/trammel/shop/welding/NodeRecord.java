package org.trammel.shop.welding;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What stands of one node of an operation.
 *
 * @param node the words of its step
 * @param opened when it was begun last; null before
 * @param done how that came out; null while it is open
 * @param wrong what was entered of it before it was corrected, oldest first
 * @param kept who said that this loop of the operation did not touch it; null where it was welded in this one
 * @param arcs how often it was opened, at this operation and its loops: the first weld and every one after it
 * @param repairs of this node, at this operation and its loops, oldest first
 */
public record NodeRecord(
        long stepId,
        String node,
        boolean ticked,
        @Nullable Opened opened,
        @Nullable Done done,
        List<Done> wrong,
        @Nullable Kept kept,
        State state,
        int arcs,
        List<Repair> repairs) {

    /** Whether its heat input was entered. */
    boolean sampled() {
        return done != null && done.heat_kJ_per_mm() != null;
    }

    /** Where a node stands. */
    public enum State {
        WAITING("waiting", "waiting"),
        OPEN("in work", "in-work"),
        TO_REPAIR("to be welded again", "repair"),
        /** It did not conform and nobody decided that it stays. */
        HELD("held", "hold"),
        DONE("welded", "done");

        private final String word;
        private final String mark;

        State(String word, String mark) {
            this.word = word;
            this.mark = mark;
        }

        public String word() {
            return word;
        }

        public String mark() {
            return mark;
        }
    }

    /**
     * A node begun.
     *
     * @param interpass_degC beside the last bead; null where it was not asked
     * @param interpassGuard_degC what the doubt of the thermometer took from the limit
     * @param reason why it was begun before an earlier one
     */
    public record Opened(
            long id,
            String fillers,
            String gases,
            @Nullable BigDecimal interpass_degC,
            @Nullable BigDecimal mostInterpass_degC,
            @Nullable BigDecimal interpassGuard_degC,
            @Nullable String gauge,
            @Nullable String reason,
            long by,
            Instant at) {}

    /**
     * A node welded.
     *
     * @param ampsLeast least current where it lay outside the range; null where it did not
     * @param amps mean current of a sampled length
     * @param words what it came to, a sentence to each thing
     * @param nonconformance the one that stands for it; null where it conforms
     * @param correction why it was entered again; null where it was entered once
     */
    public record Done(
            long id,
            long openedId,
            long procedureId,
            @Nullable BigDecimal ampsLeast,
            @Nullable BigDecimal ampsMost,
            @Nullable BigDecimal volts,
            @Nullable BigDecimal amps,
            @Nullable BigDecimal length_mm,
            @Nullable BigDecimal seconds,
            @Nullable BigDecimal efficiency,
            @Nullable BigDecimal heat_kJ_per_mm,
            @Nullable BeadColour colour,
            @Nullable BigDecimal fillet_mm,
            @Nullable String gauge,
            List<String> words,
            @Nullable String nonconformance,
            @Nullable String correction,
            long by,
            Instant at) {}

    /** That a node stays as an earlier loop of the operation left it. */
    public record Kept(long by, Instant at) {}

    /**
     * A repair.
     *
     * @param openedId the beginning it came after
     * @param nonconformance where the procedure allows no more of them
     */
    public record Repair(
            long openedId,
            int number,
            String reason,
            @Nullable String nonconformance,
            long by,
            Instant at) {}
}
