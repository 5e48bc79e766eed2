package org.trammel.shop.cuts;

import java.util.Collection;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.trammel.shop.travellers.EvidenceGivers;

/** Whoever measured a tube of a frame took part in the operation. */
@Component
class CutGivers implements EvidenceGivers {

    private final CutRepository cuts;

    CutGivers(CutRepository cuts) {
        this.cuts = cuts;
    }

    @Override
    public Set<Long> peopleAt(long operationId) {
        return cuts.peopleAt(operationId);
    }

    /** To measure what one cut is work of the operation: whoever did it does not sign for it as the second. */
    @Override
    public Set<Long> workedAt(long operationId) {
        return cuts.peopleAt(operationId);
    }

    @Override
    public Set<Long> peopleOn(Collection<Long> characteristicIds) {
        return Set.of();
    }
}
