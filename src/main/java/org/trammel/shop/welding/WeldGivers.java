package org.trammel.shop.welding;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.trammel.shop.travellers.EvidenceGivers;

/** Whoever recorded a weld took part in the operation. */
@Component
class WeldGivers implements EvidenceGivers {

    private final NodeRecords records;
    private final SeenNodes seen;

    WeldGivers(NodeRecords records, SeenNodes seen) {
        this.records = records;
        this.seen = seen;
    }

    @Override
    public Set<Long> peopleAt(long operationId) {
        Set<Long> people = new HashSet<>(records.peopleAt(operationId));
        people.addAll(seen.peopleAt(operationId));
        return people;
    }

    /** Whoever only took up what was undecided looked at no weld. */
    @Override
    public Set<Long> workedAt(long operationId) {
        Set<Long> people = new HashSet<>(records.peopleAt(operationId));
        people.addAll(seen.lookersAt(operationId));
        return people;
    }

    @Override
    public Set<Long> peopleOn(Collection<Long> characteristicIds) {
        return Set.of();
    }
}
