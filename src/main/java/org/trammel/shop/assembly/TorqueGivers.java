package org.trammel.shop.assembly;

import java.util.Collection;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.trammel.shop.travellers.EvidenceGivers;

/** Whoever tightened a bolt took part in the operation, and does not sign it as the second. */
@Component
class TorqueGivers implements EvidenceGivers {

    private final TorqueRepository torques;

    TorqueGivers(TorqueRepository torques) {
        this.torques = torques;
    }

    @Override
    public Set<Long> peopleAt(long operationId) {
        return torques.peopleAt(operationId);
    }

    @Override
    public Set<Long> workedAt(long operationId) {
        return torques.peopleAt(operationId);
    }

    @Override
    public Set<Long> peopleOn(Collection<Long> characteristicIds) {
        return Set.of();
    }
}
