package org.trammel.shop.backtraces;

import org.springframework.stereotype.Component;
import org.trammel.shop.ovens.RunsSince;
import org.trammel.shop.records.Refusal;

/** What must be there before a frame whose run is in doubt has a result: something measured, or a run that aged it. */
@Component
class TraceEvidence {

    private final RunsSince runs;

    TraceEvidence(RunsSince runs) {
        this.runs = runs;
    }

    void require(TraceResult result, TracedFrameRow frame, String deed) {
        boolean outside = frame.outcome() == TraceOutcome.CONTACT_OWNER;
        if (outside != (result == TraceResult.OWNER_CONTACTED) && result != TraceResult.DECIDED) {
            throw Refusal.input(
                    "result",
                    deed,
                    outside ? "The frame has left the shop." : "The frame is in the shop.",
                    outside
                            ? "Contact its owner, or say how it was decided."
                            : "Measure its hardness, age it further, or say how it was decided.");
        }
        if (result == TraceResult.AGED_FURTHER) {
            requireAgedFurther(frame, deed);
        } else if (result == TraceResult.HARDNESS) {
            requireHardness(frame, deed);
        }
    }

    private void requireHardness(TracedFrameRow frame, String deed) {
        if (!runs.hardnessShown(frame.runId(), frame.travellerId())) {
            String run = runs.head(frame.runId()).code();
            throw Refusal.state(
                    deed,
                    "No hardness that decides is entered of it, or of the coupon of run " + run
                            + ", within its limit. A screening by hand, rebound or conductivity never releases.",
                    "Measure the coupon on a bench tester and enter it on the sheet of " + run + ".");
        }
    }

    /** A released run after the doubtful one, of a programme that ages. */
    private void requireAgedFurther(TracedFrameRow frame, String deed) {
        if (!runs.agedSince(frame.runId(), frame.serial(), frame.travellerId())) {
            throw Refusal.state(
                    deed,
                    "No released run has aged it since.",
                    "Load it for a top-up or an age, and have that run released on its record first.");
        }
    }
}
