package org.trammel.shop.routes;

import org.springframework.stereotype.Component;
import org.trammel.shop.settings.SetUpPart;

@Component
class RoutesSetUp implements SetUpPart {

    private final RouteBook routes;

    RoutesSetUp(RouteBook routes) {
        this.routes = routes;
    }

    @Override
    public int place() {
        return 70;
    }

    @Override
    public State state() {
        long released = routes.routes().stream()
                .filter(route -> route.releasedRevisionId() != null)
                .count();
        return new State(
                "Released routes",
                released,
                released > 0,
                "Look through the starter routes, change what this shop does otherwise, and let the QA lead release them.",
                "/routes");
    }
}
