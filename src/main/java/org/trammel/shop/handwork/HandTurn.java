package org.trammel.shop.handwork;

import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.Crew;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HasCome;
import org.trammel.shop.travellers.Travellers;

/** One act of handwork on a frame: the frame locked, the operation looked at, and who may. */
@Component
class HandTurn {

    private static final Set<Proof> BY_EYE = EnumSet.of(Proof.WATER_BREAK, Proof.SERIAL_READ);

    private final HasCome hasCome;
    private final Travellers travellers;
    private final HandRecords records;
    private final Crew crew;

    HandTurn(HasCome hasCome, Travellers travellers, HandRecords records, Crew crew) {
        this.hasCome = hasCome;
        this.travellers = travellers;
        this.records = records;
        this.crew = crew;
    }

    /** The frame, and what the steps of the operation rest on. */
    record At(FrameSheet.Head head, FrameSheet.OperationLine line, Set<Proof> asked) {}

    /** @return false if the act was carried out before */
    boolean opens(Act act, String kind, long operationId) {
        return hasCome.opens(act, kind, "operation:" + operationId, List.of(operationId));
    }

    /** @return false if the act was carried out before */
    boolean opens(Act act, String kind, String subject, List<Long> operationIds) {
        return hasCome.opens(act, kind, subject, operationIds);
    }

    /** The operation goes on, where it waited for nothing but what was just recorded. */
    void goesOn(Act act, long operationId) {
        hasCome.to(act, operationId);
    }

    /** The operation as it is read, also after it is done. */
    At of(long operationId) {
        FrameSheet.Head head = travellers.headOf(operationId);
        Set<Proof> asked = records.asked(operationId);
        FrameSheet.OperationLine line = travellers.operation(operationId).line();
        if (asked.isEmpty()) {
            throw Refusal.missing(
                    "There is no sheet of handwork.",
                    "No step of operation " + line.code() + " rests on more than its tick.",
                    "Go back to the frame and tick there.");
        }
        return new At(head, line, asked);
    }

    /**
     * Refuses unless the frame stands at the operation, a step asks for this, and the person works here. A hold stops no
     * measuring. What only somebody's eyes prove is no apprentice's word alone.
     *
     * @param deed what is not done otherwise, as a sentence
     */
    At atHand(Act act, long operationId, Collection<Proof> any, String deed) {
        if (!crew.byId(act.by()).mayWork()) {
            throw Refusal.person(deed, "A reader changes nothing.", "Somebody who works here does it.");
        }
        if (any.stream().anyMatch(BY_EYE::contains) && !crew.byId(act.by()).maySign()) {
            throw Refusal.person(
                    deed,
                    "A step rests on it, and an apprentice ticks and reads, and proves nothing.",
                    "Call a worker who may sign; look together.");
        }
        At at = of(operationId);
        if (any.stream().noneMatch(at.asked()::contains)) {
            throw Refusal.state(
                    deed,
                    "No step of operation " + at.line().code() + " asks for it.",
                    "Record it at the operation in which it is done.");
        }
        boolean open = at.head().state().open();
        if (!open || at.head().currentOperationId() == null || at.head().currentOperationId() != operationId) {
            throw Refusal.state(
                    deed,
                    "The frame does not stand at operation " + at.line().code() + ": "
                            + (at.head().currentCode() == null || !open
                                    ? "it is " + at.head().state().word() + "."
                                    : "it stands at " + at.head().currentCode() + "."),
                    "Open the frame again to see where it stands.");
        }
        return at;
    }
}
