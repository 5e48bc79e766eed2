package org.trammel.shop.inspection;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.trammel.shop.travellers.EvidenceGivers;

/** Whoever read or cold-set at an operation took part in it. */
@Component
class ReadingGivers implements EvidenceGivers {

    private final ReadingRepository readings;
    private final ColdSetRepository coldSets;

    ReadingGivers(ReadingRepository readings, ColdSetRepository coldSets) {
        this.readings = readings;
        this.coldSets = coldSets;
    }

    @Override
    public Set<Long> peopleAt(long operationId) {
        Set<Long> people = new HashSet<>(readings.peopleAt(operationId));
        people.addAll(coldSets.peopleAt(operationId));
        return people;
    }

    @Override
    public Set<Long> peopleOn(Collection<Long> characteristicIds) {
        if (characteristicIds.isEmpty()) {
            return Set.of();
        }
        Set<Long> people = new HashSet<>(readings.peopleOn(characteristicIds));
        people.addAll(coldSets.peopleOn(characteristicIds));
        return people;
    }
}
