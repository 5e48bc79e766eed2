package org.trammel.shop.handwork;

import java.util.Collection;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.trammel.shop.travellers.EvidenceGivers;

/** Whoever scanned, measured or read back at an operation took part in it. */
@Component
class HandGivers implements EvidenceGivers {

    private final HandRecords records;

    HandGivers(HandRecords records) {
        this.records = records;
    }

    @Override
    public Set<Long> peopleAt(long operationId) {
        return records.peopleAt(operationId);
    }

    @Override
    public Set<Long> workedAt(long operationId) {
        return records.workedAt(operationId);
    }

    @Override
    public Set<Long> peopleOn(Collection<Long> characteristicIds) {
        return Set.of();
    }
}
