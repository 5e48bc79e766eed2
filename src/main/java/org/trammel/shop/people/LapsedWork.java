package org.trammel.shop.people;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/** Tells where somebody was let work although a confirmation of theirs had run out; whoever keeps the work answers. */
public interface LapsedWork {

    /** What a person was let do, the newest first. */
    List<Line> of(long personId);

    /**
     * One operation somebody was let do.
     *
     * @param serial of the frame
     * @param lapsedOn last day of the confirmation
     */
    record Line(
            String serial,
            String mark,
            String operation,
            String qualification,
            LocalDate lapsedOn,
            String givenBy,
            Instant at,
            String reason) {}
}
