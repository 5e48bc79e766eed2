package org.trammel.shop.designs;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Where the newest drawing of each of many designs stands, in one statement. */
@Service
@Transactional(readOnly = true)
public class DrawingStates {

    private final NewestRevisions revisions;

    DrawingStates(NewestRevisions revisions) {
        this.revisions = revisions;
    }

    /** The newest revision of each design, by id of the design. */
    public Map<Long, RevisionSummary> newest(Collection<Long> designIds) {
        Map<Long, RevisionSummary> newest = new HashMap<>();
        if (!designIds.isEmpty()) {
            revisions.of(designIds).forEach(r -> newest.put(r.summary().designId(), r.summary()));
        }
        return newest;
    }
}
