package org.trammel.shop.designs;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;

/** Whether the drawing file of a draft may go to the customer: they approve what they see, so it must be of this draft. */
final class SentDrawing {

    private static final int SHOWN = 12;

    private SentDrawing() {}

    static void refuseUnlessFits(String deed, @Nullable String drawing, boolean fits) {
        if (drawing == null) {
            throw Refusal.state(
                    deed,
                    "It has no drawing file, and the customer approves a file by its hash.",
                    "Add the drawing, then send it.");
        }
        if (!fits) {
            throw Refusal.state(
                    deed,
                    "Inputs were changed after its drawing was added, so the customer would approve other numbers than the"
                            + " frame is built from.",
                    "Draw it from the inputs as they are now, add that file, then send it.");
        }
    }

    /** Refuses, or asks about, a file that was approved for another revision: with a change a file of its own is due. */
    static void askIfApprovedBefore(
            String deed, DesignRevision revision, List<DesignRevision> ofDesign, boolean confirmed) {
        ofDesign.stream()
                .filter(other -> other.id() != revision.id() && other.approvedByFileOf(revision))
                .findFirst()
                .ifPresent(other -> {
                    String same = "Its drawing is the file that was approved for revision " + other.letter();
                    if (!other.drawnInputs().equals(revision.drawnInputs())) {
                        throw Refusal.state(
                                deed,
                                same + ", and the inputs are others now.",
                                "Draw it from the inputs as they are now, add that file, then send it.");
                    }
                    if (!confirmed) {
                        throw Refusal.ask(
                                "file",
                                deed,
                                same + "; no input was changed since.",
                                "Add the new drawing; confirm only if nothing the drawing shows was changed.");
                    }
                });
    }

    static void refuseOther(String deed, String approved, @Nullable String sent) {
        if (!approved.equals(sent)) {
            throw Refusal.input(
                    "file",
                    deed,
                    "The approval names file " + shortened(approved) + "; the drawing that was sent is "
                            + shortened(sent) + ".",
                    "Send the customer this drawing again and enter the approval of it.");
        }
    }

    private static String shortened(@Nullable String sha256) {
        return sha256 == null ? "none" : sha256.length() > SHOWN ? sha256.substring(0, SHOWN) + "…" : sha256;
    }
}
