package org.trammel.shop.assembly;

import java.util.List;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.Crew;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HasCome;
import org.trammel.shop.travellers.Travellers;

/** One act at an operation that the rules of building name: the frame locked, and who may. */
@Component
class BuildTurn {

    private final HasCome hasCome;
    private final Travellers travellers;
    private final Evidence evidence;
    private final BuildRulesBook book;
    private final Crew crew;

    BuildTurn(HasCome hasCome, Travellers travellers, Evidence evidence, BuildRulesBook book, Crew crew) {
        this.hasCome = hasCome;
        this.travellers = travellers;
        this.evidence = evidence;
        this.book = book;
        this.crew = crew;
    }

    /** An operation of a frame that the rules name. */
    record At(FrameSheet.Head head, FrameSheet.OperationLine line, BuildRules rules) {}

    /** @return false if the act was carried out before */
    boolean opens(Act act, String kind, long operationId) {
        return hasCome.opens(act, kind, "operation:" + operationId, List.of(operationId));
    }

    At of(long operationId) {
        FrameSheet.Head head = travellers.headOf(operationId);
        FrameSheet.OperationLine line = travellers.operation(operationId).line();
        BuildRules rules = book.inForce()
                .filter(one -> one.names(line.code()))
                .orElseThrow(() -> Refusal.missing(
                        "There is no such sheet.",
                        "No rules in force name operation " + line.code() + " for a join, a final check or packing.",
                        "Go back to the frame. The QA lead keeps the rules."));
        return new At(head, line, rules);
    }

    /** Refuses unless the frame stands at the operation and the person works here. */
    At atHand(Act act, long operationId, String deed) {
        if (!crew.byId(act.by()).mayWork()) {
            throw Refusal.person(deed, "A reader changes nothing.", "Somebody who works here does it.");
        }
        At at = of(operationId);
        Long current = at.head().currentOperationId();
        if (!at.head().state().open() || current == null || current != operationId) {
            throw Refusal.state(
                    deed,
                    at.head().mark() + " does not stand at operation "
                            + at.line().code() + ".",
                    "Open the frame again to see where it stands.");
        }
        return at;
    }

    /** The same for what is done to the bicycle itself: nothing on hold is joined, bedded, ridden or packed, freed or not. */
    At atHandAndFree(Act act, long operationId, String deed) {
        At at = atHand(act, operationId, deed);
        requireFree(operationId);
        return at;
    }

    void requireFree(long operationId) {
        evidence.requireFree(operationId, "go on");
    }

    void require(boolean named, At at, String deed) {
        if (!named) {
            throw Refusal.state(
                    deed,
                    "The rules do not name operation " + at.line().code() + " for it.",
                    "Record it at the operation in which it is done.");
        }
    }

    void come(Act act, long operationId) {
        hasCome.to(act, operationId);
    }
}
