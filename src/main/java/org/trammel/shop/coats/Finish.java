package org.trammel.shop.coats;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A revision of a finish.
 *
 * @param supersededAt when a later one took its place; null while it is in force
 */
public record Finish(
        long id,
        String code,
        String letter,
        NewFinish content,
        long setBy,
        Instant setAt,
        @Nullable Instant supersededAt) {

    public String called() {
        return code + " " + letter;
    }

    public boolean inForce() {
        return supersededAt == null;
    }

    boolean isFor(String metal) {
        return content.metals().contains(metal);
    }

    boolean blasts(String operation) {
        return content.blastOperations().contains(operation);
    }

    boolean coats(String operation) {
        return content.coatOperations().contains(operation);
    }

    boolean guards(String operation) {
        return blasts(operation) || coats(operation);
    }
}
