package org.trammel.shop.assembly;

import java.util.Collection;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.trammel.shop.travellers.EvidenceGivers;

/** Whoever measured a seatpost took part in the operation. */
@Component
class InsertionGivers implements EvidenceGivers {

    private final InsertionRepository rows;

    InsertionGivers(InsertionRepository rows) {
        this.rows = rows;
    }

    @Override
    public Set<Long> peopleAt(long operationId) {
        return rows.peopleAt(operationId);
    }

    @Override
    public Set<Long> peopleOn(Collection<Long> characteristicIds) {
        return Set.of();
    }
}
