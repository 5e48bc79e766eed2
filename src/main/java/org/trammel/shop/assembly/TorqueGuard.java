package org.trammel.shop.assembly;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Refusal;
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
        TorqueSheet sheet = sheets.of(
                operation.operationId(),
                operation.code(),
                components.of(
                        operation.serial(),
                        travellers.head(operation.travellerId()).part()));
        List<TorqueSheet.Line> open = sheet.outstanding();
        if (open.isEmpty()) {
            return Optional.empty();
        }
        String named = open.stream()
                .limit(NAMED)
                .map(line -> line.called() + " is " + line.state().word())
                .collect(Collectors.joining("; "));
        return Optional.of(Refusal.state(
                operation.cannot(),
                open.size() + " of " + sheet.lines().size() + " fasteners of its components are outstanding: " + named
                        + (open.size() > NAMED ? "; and more." : "."),
                "Finish them on the torque sheet of the frame."));
    }
}
