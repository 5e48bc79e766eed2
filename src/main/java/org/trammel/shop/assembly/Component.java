package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A revision of a component's sheet; see {@link NewComponent}.
 *
 * @param inForceAt since when frames may be given it; null for a draft
 * @param supersededAt when a later one took its place; null until then
 * @param leastInsertion_mm how far a seatpost must be in; null where its sheet does not say
 */
public record Component(
        long id,
        String code,
        String letter,
        ComponentKind kind,
        String what,
        String operation,
        @Nullable String rideOperation,
        boolean carbon,
        @Nullable BigDecimal clampedMost_Nm,
        String source,
        String edition,
        List<Fastener> fasteners,
        long draftedBy,
        Instant draftedAt,
        @Nullable Long inForceBy,
        @Nullable Instant inForceAt,
        @Nullable Instant supersededAt,
        @Nullable BigDecimal leastInsertion_mm) {

    public Component {
        fasteners = List.copyOf(fasteners);
    }

    public String called() {
        return code + " " + letter;
    }

    public boolean draft() {
        return inForceAt == null && supersededAt == null;
    }

    public boolean inForce() {
        return inForceAt != null && supersededAt == null;
    }

    /** What it is now, as a word. */
    public String state() {
        return draft() ? "draft" : inForce() ? "in force" : inForceAt == null ? "draft, replaced" : "superseded";
    }

    /** Its fasteners that are torqued at an operation: all where it is fitted, those so marked after the ride. */
    List<Fastener> at(String operationCode) {
        if (operation.equals(operationCode)) {
            return fasteners;
        }
        return operationCode.equals(rideOperation)
                ? fasteners.stream().filter(Fastener::afterRide).toList()
                : List.of();
    }
}
