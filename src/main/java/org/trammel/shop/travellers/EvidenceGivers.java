package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.Set;

/** Tells who gave evidence for an operation, such as a reading. Each module that keeps evidence provides one. */
public interface EvidenceGivers {

    /** Ids of the people, also of those whose evidence was replaced since. */
    Set<Long> peopleAt(long operationId);

    /** The same, for some characteristics only. */
    Set<Long> peopleOn(Collection<Long> characteristicIds);

    /** Those who did work at an operation that is not a reading; whoever signs as the second took no part in it. */
    default Set<Long> workedAt(long operationId) {
        return Set.of();
    }
}
