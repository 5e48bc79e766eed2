package org.trammel.shop.inspection;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.people.StaysAsItIs;

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
        @Nullable StaysAsItIs decided,
        boolean waits) {}
