package org.trammel.shop.designs;

import java.util.List;
import org.springframework.stereotype.Service;
import org.trammel.shop.records.Act;
import org.trammel.shop.routes.RouteSheet;

/** Designs of frames and their revisions. */
@Service
public class Designs {

    /**
     * One revision.
     *
     * @throws org.trammel.shop.records.Refusal if there is none with that id
     */
    public DesignSheet revision(long revisionId) {
        throw new UnsupportedOperationException("being built");
    }

    /** Characteristics of the route, children included, that want a nominal which the revision does not give. */
    public List<Lacking> readyFor(long revisionId, RouteSheet route) {
        throw new UnsupportedOperationException("being built");
    }

    /**
     * Releases a checked revision to the shop; the one released before is superseded. Called by whoever makes the
     * traveller, in the same transaction.
     *
     * @throws org.trammel.shop.records.Refusal unless it is checked and every nominal of the route is there
     */
    public DesignSheet release(Act act, long revisionId, RouteSheet route) {
        throw new UnsupportedOperationException("being built");
    }
}
