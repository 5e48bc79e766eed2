package org.trammel.shop.coats;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A revision of a finish.
 *
 * @param coat what it asks of the finished coat; null where it asks nothing
 * @param supersededAt when a later one took its place; null while it is in force
 */
public record Finish(
        long id,
        String code,
        String letter,
        NewFinish content,
        @Nullable CoatAsked coat,
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

    boolean readsFilm(String operation) {
        return coat != null && coat.operations().contains(operation);
    }

    /** Whether film of a second colour is laid there. */
    boolean lays(String operation) {
        SecondColour second = content.secondColour();
        return second != null && second.layOperations().contains(operation);
    }

    /** Whether film of a second colour is drawn off there. */
    boolean draws(String operation) {
        SecondColour second = content.secondColour();
        return second != null && second.drawOperations().contains(operation);
    }

    boolean guards(String operation) {
        return blasts(operation) || coats(operation) || readsFilm(operation) || lays(operation) || draws(operation);
    }
}
