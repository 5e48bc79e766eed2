package org.trammel.shop.coats;

import java.util.List;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.Crew;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HasCome;
import org.trammel.shop.travellers.Travellers;

/** One act on the surface or coat of a frame: the frame locked, the operation looked at, and who may. */
@Component
class CoatTurn {

    private final HasCome hasCome;
    private final Travellers travellers;
    private final Finishes finishes;
    private final Crew crew;

    CoatTurn(HasCome hasCome, Travellers travellers, Finishes finishes, Crew crew) {
        this.hasCome = hasCome;
        this.travellers = travellers;
        this.finishes = finishes;
        this.crew = crew;
    }

    /** An operation that a finish guards, and the frame that stands at it. */
    record At(FrameSheet.Head head, FrameSheet.OperationLine line, Finish finish) {}

    /** @return false if the act was carried out before */
    boolean opens(Act act, String kind, long operationId) {
        return hasCome.opens(act, kind, "operation:" + operationId, List.of(operationId));
    }

    /** The operation as it is read, also after it is done. */
    At of(long operationId) {
        FrameSheet.Head head = travellers.headOf(operationId);
        FrameSheet.OperationLine line = travellers.operation(operationId).line();
        Finish finish = finishes.guarding(line.code(), head.metal())
                .orElseThrow(() -> Refusal.missing(
                        "There is no sheet of a coat.",
                        "No finish names operation " + line.code() + " for such a metal.",
                        "Go back to the frame. The QA lead keeps the finishes."));
        return new At(head, line, finish);
    }

    /**
     * Refuses unless the frame stands at the operation and the person works here. A hold stops no measuring.
     *
     * @param deed what is not done otherwise, as a sentence
     */
    At atHand(Act act, long operationId, String deed) {
        if (!crew.byId(act.by()).mayWork()) {
            throw Refusal.person(deed, "A reader changes nothing.", "Somebody who works here does it.");
        }
        At at = of(operationId);
        if (!at.head().state().open()
                || at.head().currentOperationId() == null
                || at.head().currentOperationId() != operationId) {
            throw Refusal.state(
                    deed,
                    at.head().mark() + " does not stand at operation "
                            + at.line().code() + ": "
                            + (at.head().currentCode() == null
                                            || !at.head().state().open()
                                    ? "it is " + at.head().state().word() + "."
                                    : "it stands at " + at.head().currentCode() + "."),
                    "Open the frame again to see where it stands.");
        }
        return at;
    }

    void come(Act act, long operationId) {
        hasCome.to(act, operationId);
    }
}
