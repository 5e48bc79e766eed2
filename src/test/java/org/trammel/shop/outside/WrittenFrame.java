package org.trammel.shop.outside;

import java.util.List;

/** A frame that was written in bulk, with the ids of what is done at it. */
public record WrittenFrame(String serial, long travellerId, List<Operation> operations) {

    /** An operation of the frame. */
    public record Operation(long id, String code, boolean together, List<Step> steps, List<Long> characteristics) {}

    /** A step to tick. */
    public record Step(long id, String text) {}
}
