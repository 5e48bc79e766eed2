package org.trammel.shop.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.handwork.ProofSheet;
import org.trammel.shop.travellers.FrameSheet;

/**
 * The list of a tablet: the next frames at its stations.
 *
 * @param heading the stations, in words
 * @param choices stations to choose from at a desk; empty at a tablet that serves its own
 * @param batches the same step of several frames, to be ticked together
 * @param rows every frame, what is most pressing first
 */
record NextView(String heading, List<Choice> choices, List<Batch> batches, List<Row> rows) {

    /** A station to choose. */
    record Choice(String code, String name, boolean chosen) {}

    /**
     * One frame in the list.
     *
     * @param hold reasons of the holds that stop the work at hand; null if none does
     * @param ahead holds of operations further on, in words; they stop nothing yet
     */
    record Row(
            FrameSheet.Head head,
            String operation,
            String station,
            String next,
            String state,
            String kind,
            List<FrameView.ClockLine> clocks,
            @Nullable String hold,
            List<String> ahead) {}

    /**
     * Frames whose same step may be ticked at once.
     *
     * @param lotKind kind of the lot the step asks for; null if none
     * @param proof what the step asks for beside its tick; null if nothing
     */
    record Batch(
            String id,
            String operation,
            String station,
            String step,
            @Nullable String lotKind,
            @Nullable ProofSheet proof,
            List<Member> members) {}

    /** A frame of a batch, by its step. */
    record Member(FrameSheet.Head head, long stepId) {}
}
