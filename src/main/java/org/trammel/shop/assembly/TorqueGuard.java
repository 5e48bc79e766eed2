package org.trammel.shop.assembly;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.Awaited;
import org.trammel.shop.travellers.Travellers;

/**
 * Keeps the gate shut in which components of a frame are fitted, until each of their fasteners is torqued in its band and
 * witnessed; and that of the check after the ride, until those so marked are torqued again, later than the newest good ride.
 */
@Component
class TorqueGuard implements Awaited {

    private static final int NAMED = 3;

    private final FrameComponents components;
    private final TorqueSheets sheets;
    private final Travellers travellers;

    TorqueGuard(FrameComponents components, TorqueSheets sheets, Travellers travellers) {
        this.components = components;
        this.sheets = sheets;
        this.travellers = travellers;
    }

    @Override
    public Optional<Refusal> outstanding(AtItsGate operation) {
        if (operation.doneOutside() || !components.any(operation.serial())) {
            return Optional.empty();
        }
        return outstanding(sheet(operation), operation.cannot());
    }

    /** A step of the route that rests on torques asks for components, so that none passes for want of them. */
    @Override
    public Optional<Refusal> proof(AtItsGate operation, ProvenStep step) {
        if (step.proof().sheet() != Proof.Sheet.TORQUE || operation.doneOutside()) {
            return Optional.empty();
        }
        String cannot = operation.notTicked(step.text());
        TorqueSheet sheet = sheet(operation);
        boolean again = step.proof() == Proof.TORQUED_AGAIN;
        if (again ? !components.any(operation.serial()) : sheet.lines().isEmpty()) {
            return Optional.of(Refusal.state(
                    cannot,
                    "It rests on the torque sheet, and no component with a sheet in force is on the list of the frame.",
                    "Owner, QA lead or whoever is authorised for torque gives the frame its components."));
        }
        return outstanding(sheet, cannot);
    }

    private TorqueSheet sheet(AtItsGate operation) {
        return sheets.of(
                operation.operationId(),
                operation.code(),
                components.of(
                        operation.serial(),
                        travellers.head(operation.travellerId()).part()));
    }

    private static Optional<Refusal> outstanding(TorqueSheet sheet, String cannot) {
        List<TorqueSheet.Line> open = sheet.outstanding();
        if (open.isEmpty()) {
            return Optional.empty();
        }
        String named = open.stream()
                .limit(NAMED)
                .map(line -> line.called() + " is " + line.state().word())
                .collect(Collectors.joining("; "));
        return Optional.of(Refusal.state(
                cannot,
                open.size() + " of " + sheet.lines().size() + " fasteners of its components are outstanding: " + named
                        + (open.size() > NAMED ? "; and more." : "."),
                "Finish them on the torque sheet of the frame."));
    }
}
