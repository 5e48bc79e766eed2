package org.trammel.shop.people;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything the sheet of one person shows.
 *
 * @param names earlier names, with the moment each began
 * @param standsIn roles they are named to stand in for
 * @param locked their PIN or password is locked
 * @param keeper who looks may change it
 * @param self who looks is the person
 * @param letWork operations they were let do although a confirmation had run out
 */
record PersonSheet(
        CrewLists.Line line,
        String shownName,
        LocalDate joinedOn,
        @Nullable LocalDate leftOn,
        List<Held> qualifications,
        List<Named> names,
        List<StandIn> standsIn,
        List<Away> absences,
        List<Wrong> failures,
        List<Lifted> lifts,
        boolean pin,
        boolean pinGiven,
        boolean password,
        boolean locked,
        boolean keeper,
        boolean self,
        List<LapsedWork.Line> letWork) {

    /** Whether a confirmation has run out. */
    public boolean lapsed() {
        return qualifications.stream().anyMatch(one -> one.state() == Standing.State.CONFIRMATION_LAPSED);
    }

    /**
     * A qualification and what it is worth today.
     *
     * @param takenBack who took it back and why; null while it stands
     */
    record Held(
            Qualification sheet,
            Standing.State state,
            @Nullable LocalDate until,
            boolean soon,
            String words,
            @Nullable String takenBack) {

        /** Shape and colour of its state on a sheet. */
        public String mark() {
            return switch (state) {
                case VALID -> soon ? "tight" : "done";
                case CONFIRMATION_LAPSED, EXPIRED -> "stopped";
                case ENDED, NOT_HELD -> "waiting";
            };
        }

        /** Its state in words. */
        public String word() {
            return switch (state) {
                case VALID -> soon ? "ends soon" : "valid";
                case CONFIRMATION_LAPSED -> "confirmation lapsed";
                case EXPIRED -> "expired";
                case ENDED -> "taken back";
                case NOT_HELD -> "not begun";
            };
        }
    }

    /** A role somebody stands in for, from a day to a day. */
    record StandIn(
            Role role,
            String word,
            LocalDate from,
            @Nullable LocalDate until,
            boolean open) {}

    /** A name and since when. */
    record Named(String name, Instant since) {}

    /** A guess that was wrong. */
    record Wrong(Instant at, String secret, boolean locked) {}

    /** A lock that was lifted. */
    record Lifted(Instant at, String by, String reason) {}

    /** Days away. */
    record Away(LocalDate from, LocalDate until) {}
}
