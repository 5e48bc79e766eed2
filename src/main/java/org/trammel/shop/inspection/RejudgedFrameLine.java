package org.trammel.shop.inspection;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.people.Deciders;
import org.trammel.shop.people.Role;

/**
 * A frame of a re-judgement.
 *
 * @param readings how many of it were judged again
 * @param toMeasure how many of them are in force and not cleared
 * @param result null while there is none; a cleared frame needs none
 * @param decided that it stays as it is without being measured, as it was put forward or decided; null if it was not
 * @param waits whether it still waits for a result
 */
public record RejudgedFrameLine(
        String serial,
        FrameOutcome outcome,
        long readings,
        long toMeasure,
        @Nullable FrameResult result,
        @Nullable String resultWords,
        @Nullable Long resultBy,
        @Nullable Instant resultAt,
        @Nullable Decided decided,
        boolean waits) {

    /**
     * What was put forward last.
     *
     * @param number which of those ever put forward
     * @param changesWhatWasOrdered whether dimension, looks or weight may differ from what was ordered
     * @param customer who of the customer agreed, when and how
     */
    public record Decided(
            int number,
            String words,
            boolean changesWhatWasOrdered,
            @Nullable String customer,
            List<Agreed> agreed) {

        /** Roles that must still agree. */
        public List<Role> missing() {
            List<Role> given = agreed.stream().map(Agreed::as).toList();
            return Deciders.OF_WHAT_STAYS_AS_IT_IS.stream()
                    .filter(role -> !given.contains(role))
                    .toList();
        }
    }

    /** Somebody agreed in a role. */
    public record Agreed(String name, Role as, Instant at) {}
}
