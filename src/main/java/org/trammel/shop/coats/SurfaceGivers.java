package org.trammel.shop.coats;

import java.util.Collection;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.trammel.shop.travellers.EvidenceGivers;

/** Whoever recorded the surface of a frame took part in the operation. */
@Component
class SurfaceGivers implements EvidenceGivers {

    private final SurfaceRecords records;

    SurfaceGivers(SurfaceRecords records) {
        this.records = records;
    }

    @Override
    public Set<Long> peopleAt(long operationId) {
        return records.peopleAt(operationId);
    }

    @Override
    public Set<Long> peopleOn(Collection<Long> characteristicIds) {
        return Set.of();
    }
}
