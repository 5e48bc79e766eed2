package org.trammel.shop.drift;

import java.util.Optional;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.stations.Jig;
import org.trammel.shop.stations.Stations;
import org.trammel.shop.travellers.Awaited;
import org.trammel.shop.travellers.Travellers;

/**
 * Keeps the gate shut of an operation that is read on the scales of a jig, until it is noted in which, and while that one is
 * stopped: a frame whose jig nobody noted stands on no chart, and no rule would have stopped its welder.
 */
@Component
class JigGuard implements Awaited {

    private static final String SCALES = "JIG-SCALE";

    private final JigUses uses;
    private final Stations stations;
    private final Travellers travellers;

    JigGuard(JigUses uses, Stations stations, Travellers travellers) {
        this.uses = uses;
        this.stations = stations;
        this.travellers = travellers;
    }

    @Override
    public Optional<Refusal> outstanding(AtItsGate operation) {
        if (operation.doneOutside() || !readOnScales(operation.operationId())) {
            return Optional.empty();
        }
        Jig jig = uses.of(operation.travellerId()).flatMap(stations::jig).orElse(null);
        if (jig == null) {
            return Optional.of(Refusal.state(
                    operation.cannot(),
                    "Nobody noted in which jig it was set up.",
                    "Note the jig, from the sheet of the frame; it goes on by that."));
        }
        return jig.stopped()
                ? Optional.of(Refusal.state(
                        operation.cannot(),
                        "Jig " + jig.code() + ", in which it was set up, is stopped.",
                        "Set it up in another one and note that; or call the QA lead, who frees the jig after a check, and"
                                + " note it once more."))
                : Optional.empty();
    }

    private boolean readOnScales(long operationId) {
        return travellers.operation(operationId).characteristics().stream()
                .anyMatch(one -> SCALES.equals(one.gaugeKind()));
    }
}
