package org.trammel.shop.materials;

import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.Awaited;

/** Keeps the step of the tubes shut until each place of the frame has its own. */
@Component
class TubeGuard implements Awaited {

    private final TubeRecords records;

    TubeGuard(TubeRecords records) {
        this.records = records;
    }

    /** A tube that was scrapped since, or whose lot was set aside, is told by {@link TubeAnew}. */
    @Override
    public Optional<Refusal> outstanding(AtItsGate operation) {
        return Optional.empty();
    }

    @Override
    public Optional<Refusal> proof(AtItsGate operation, ProvenStep step) {
        if (step.proof() != Proof.TUBES) {
            return Optional.empty();
        }
        String cannot = "“" + step.text() + "” of " + operation.mark() + " was not ticked.";
        TubeSheet sheet = records.of(operation.operationId());
        return sheet.lines().stream()
                .filter(line -> line.issued() != null && line.wrong() != null)
                .findFirst()
                .map(line -> Refusal.state(
                        cannot,
                        "The " + line.place().called() + " cannot stay as it was issued. "
                                + Objects.requireNonNull(line.wrong()),
                        "Scrap the piece on the sheet of tubes, then scan another for that place."))
                .or(() -> sheet.complete()
                        ? Optional.empty()
                        : Optional.of(Refusal.state(
                                cannot,
                                "No lot was issued for: "
                                        + sheet.lines().stream()
                                                .filter(line -> line.issued() == null)
                                                .map(line -> line.place().called())
                                                .collect(Collectors.joining(", "))
                                        + ".",
                                "Scan a tube for each of them on the sheet of tubes.")));
    }
}
