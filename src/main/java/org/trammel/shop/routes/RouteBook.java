package org.trammel.shop.routes;

import java.util.List;
import org.springframework.stereotype.Service;

/** The routes of the shop, as other modules read them. */
@Service
public class RouteBook {

    /** Every route with its released revision and its draft. */
    public List<RouteSummary> routes() {
        throw new UnsupportedOperationException("being built");
    }

    /** The released revision of a route. */
    public RouteSheet released(String code) {
        throw new UnsupportedOperationException("being built");
    }

    /** One revision. */
    public RouteSheet revision(long revisionId) {
        throw new UnsupportedOperationException("being built");
    }
}
