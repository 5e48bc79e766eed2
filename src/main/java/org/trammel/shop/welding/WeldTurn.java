package org.trammel.shop.welding;

import java.util.List;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.Crew;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HasCome;
import org.trammel.shop.travellers.Travellers;

/** One act on the welds of a frame: the frame locked, the operation looked at, and who may. */
@Component
class WeldTurn {

    private final HasCome hasCome;
    private final Travellers travellers;
    private final Procedures procedures;
    private final Crew crew;

    WeldTurn(HasCome hasCome, Travellers travellers, Procedures procedures, Crew crew) {
        this.hasCome = hasCome;
        this.travellers = travellers;
        this.procedures = procedures;
        this.crew = crew;
    }

    /** An operation that a procedure guards, and the frame that stands at it. */
    record At(FrameSheet.Head head, FrameSheet.OperationSheetOfFrame operation, Procedure procedure) {

        public FrameSheet.OperationLine line() {
            return operation.line();
        }

        public boolean joins() {
            return procedure.content().operations().joins(line().code());
        }

        public boolean looks() {
            return procedure.looks(line().code());
        }
    }

    /** @return false if the act was carried out before */
    boolean opens(Act act, String kind, long operationId) {
        return hasCome.opens(act, kind, "operation:" + operationId, List.of(operationId));
    }

    /** The operation as it is read, also after it is done. */
    At of(long operationId) {
        FrameSheet.Head head = travellers.headOf(operationId);
        FrameSheet.OperationSheetOfFrame operation = travellers.operation(operationId);
        Procedure procedure = procedures
                .guarding(head, operation.line().code(), null)
                .orElseThrow(() -> Refusal.missing(
                        "There is no sheet of a weld.",
                        "No procedure in force names operation "
                                + operation.line().code() + " for such a frame.",
                        "Go back to the frame. The QA lead puts procedures in force."));
        return new At(head, operation, procedure);
    }

    /**
     * Refuses unless the frame stands at the operation and the person works here.
     *
     * @param deed what is not done otherwise, as a sentence
     */
    At atHand(Act act, long operationId, String deed) {
        if (!crew.byId(act.by()).mayWork()) {
            throw Refusal.person(deed, "A reader changes nothing.", "Somebody who works here does it.");
        }
        At at = of(operationId);
        FrameSheet.Head head = at.head();
        if (!head.state().open() || head.currentOperationId() == null || head.currentOperationId() != operationId) {
            throw Refusal.state(
                    deed,
                    head.mark() + " does not stand at operation " + at.line().code() + ": "
                            + (head.currentCode() == null || !head.state().open()
                                    ? "it is " + head.state().word() + "."
                                    : "it stands at " + head.currentCode() + "."),
                    "Open the frame again to see where it stands.");
        }
        return at;
    }

    void come(Act act, long operationId) {
        hasCome.to(act, operationId);
    }
}
