package org.trammel.shop.travellers;

import java.util.HashSet;
import java.util.Set;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

/** Who took part in an operation: whoever ticked at it, and whoever gave evidence for it. */
@Component
class Doers {

    private final TickRepository ticks;
    private final ObjectProvider<EvidenceGivers> givers;

    Doers(TickRepository ticks, ObjectProvider<EvidenceGivers> givers) {
        this.ticks = ticks;
        this.givers = givers;
    }

    Set<Long> of(long operationId) {
        Set<Long> people = new HashSet<>(ticks.peopleAt(operationId));
        givers.forEach(g -> people.addAll(g.peopleAt(operationId)));
        return people;
    }
}
