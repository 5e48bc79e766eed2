package org.trammel.shop.welding;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A revision of a procedure.
 *
 * @param draftedBy 0 for what the program came with
 * @param supersededAt when a later one took its place; null before
 */
public record Procedure(
        long id,
        String code,
        String letter,
        ProcedureState state,
        NewProcedure content,
        long draftedBy,
        Instant draftedAt,
        @Nullable Long approvedBy,
        @Nullable Instant approvedAt,
        @Nullable Instant supersededAt,
        long version) {

    public String called() {
        return code + " " + letter;
    }

    public boolean inForce() {
        return state == ProcedureState.IN_FORCE;
    }

    boolean tacks(String operation) {
        return content.operations().tack().contains(operation);
    }

    boolean welds(String operation) {
        return content.operations().weld().contains(operation);
    }

    /** How many of so many nodes of an operation are sampled for their heat input. */
    int samples(String operation, int nodes) {
        return welds(operation) ? Math.min(content.heat().samples(), nodes) : 0;
    }

    boolean looks(String operation) {
        return content.looks().asked() && content.operations().look().contains(operation);
    }
}
