package org.trammel.shop.assembly;

import java.util.List;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HasCome;
import org.trammel.shop.travellers.Travellers;

/** One act at a torque sheet: the frame locked, the operation looked at, and who may. */
@Component
class TorqueTurn {

    private final HasCome hasCome;
    private final Travellers travellers;
    private final FrameComponents components;
    private final TorqueSheets sheets;
    private final Crew crew;
    private final Settings settings;

    TorqueTurn(
            HasCome hasCome,
            Travellers travellers,
            FrameComponents components,
            TorqueSheets sheets,
            Crew crew,
            Settings settings) {
        this.hasCome = hasCome;
        this.travellers = travellers;
        this.components = components;
        this.sheets = sheets;
        this.crew = crew;
        this.settings = settings;
    }

    /** An operation of a frame with its torque sheet. */
    record At(
            FrameSheet.Head head,
            FrameSheet.OperationSheetOfFrame operation,
            FrameSheet.OperationLine line,
            TorqueSheet sheet) {}

    /** @return false if the act was carried out before */
    boolean opens(Act act, String kind, long operationId) {
        return hasCome.opens(act, kind, "operation:" + operationId, List.of(operationId));
    }

    /** The operation as it is read, also after it is done. */
    At of(long operationId) {
        FrameSheet.Head head = travellers.headOf(operationId);
        FrameSheet.OperationSheetOfFrame operation = travellers.operation(operationId);
        return new At(
                head,
                operation,
                operation.line(),
                sheets.of(operationId, operation.line().code(), components.of(head.serial(), head.part())));
    }

    /**
     * Refuses unless the frame stands at the operation and the person works here, with the qualification it asks for. A hold
     * stops no torque: it can be loosened again.
     *
     * @param deed what is not done otherwise, as a sentence
     */
    At atHand(Act act, long operationId, String deed) {
        Person person = crew.byId(act.by());
        if (!person.mayWork()) {
            throw Refusal.person(deed, "A reader changes nothing.", "Somebody who works here does it.");
        }
        At at = of(operationId);
        requireHere(at, operationId, deed);
        String qualification = at.operation().qualification();
        if (qualification != null) {
            crew.requireQualified(person.id(), qualification, settings.dayOf(act.at()), deed);
        }
        if (at.sheet().lines().isEmpty()) {
            throw Refusal.missing(
                    deed,
                    at.head().mark() + " has no component that is torqued at operation "
                            + at.line().code() + ".",
                    "Give the frame its components first.");
        }
        components.settle(act, at.head(), at.line().code());
        return at;
    }

    void requireHere(At at, long operationId, String deed) {
        Long current = at.head().currentOperationId();
        if (!at.head().state().open() || current == null || current != operationId) {
            throw Refusal.state(
                    deed,
                    at.head().mark() + " does not stand at operation "
                            + at.line().code() + ": "
                            + (current == null || !at.head().state().open()
                                    ? "it is " + at.head().state().word() + "."
                                    : "it stands at " + at.head().currentCode() + "."),
                    "Open the frame again to see where it stands.");
        }
    }

    void come(Act act, long operationId) {
        hasCome.to(act, operationId);
    }
}
