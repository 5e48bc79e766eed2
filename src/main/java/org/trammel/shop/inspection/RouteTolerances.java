package org.trammel.shop.inspection;

import java.util.Collection;
import java.util.List;
import org.springframework.stereotype.Component;
import org.trammel.shop.gauges.TolerancesAsked;
import org.trammel.shop.routes.RouteBook;

/** Tells the register of gauges what the routes in force have judged with each kind. */
@Component
class RouteTolerances implements TolerancesAsked {

    private final RouteBook routes;

    RouteTolerances(RouteBook routes) {
        this.routes = routes;
    }

    @Override
    public List<Asked> of(Collection<String> kinds) {
        return routes.tolerancesOf(kinds).stream()
                .map(t ->
                        new Asked(t.gaugeKind(), t.unit(), t.code(), t.name(), t.lowerDeviation(), t.upperDeviation()))
                .toList();
    }
}
