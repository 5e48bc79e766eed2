package org.trammel.shop.materials;

import java.util.Collection;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.trammel.shop.travellers.EvidenceGivers;

/** Whoever issued a tube at an operation took part in it. */
@Component
class TubeGivers implements EvidenceGivers {

    private final TubeIssueRepository issues;

    TubeGivers(TubeIssueRepository issues) {
        this.issues = issues;
    }

    @Override
    public Set<Long> peopleAt(long operationId) {
        return issues.peopleAt(operationId);
    }

    /** Also who took a section for a reason of their own: none of them looks at it as the second. */
    @Override
    public Set<Long> workedAt(long operationId) {
        return issues.peopleAt(operationId);
    }

    @Override
    public Set<Long> peopleOn(Collection<Long> characteristicIds) {
        return Set.of();
    }
}
