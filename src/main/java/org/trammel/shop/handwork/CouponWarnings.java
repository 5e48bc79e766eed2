package org.trammel.shop.handwork;

import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.designs.DesignSheet;
import org.trammel.shop.designs.ReleaseWarnings;
import org.trammel.shop.routes.RouteBook;
import org.trammel.shop.routes.RouteSheet;

/** Says before a release that the conductivity of a frame's metal is judged by the route's limits, for want of coupons. */
@Component
class CouponWarnings implements ReleaseWarnings {

    private final RouteBook routes;
    private final Coupons coupons;

    CouponWarnings(RouteBook routes, Coupons coupons) {
        this.routes = routes;
        this.coupons = coupons;
    }

    @Override
    @Transactional(readOnly = true)
    public List<String> of(DesignSheet revision) {
        if (revision.routeRevisionId() == null) {
            return List.of();
        }
        RouteSheet route = routes.revision(revision.routeRevisionId());
        String metal = route.metal();
        return Stream.concat(Stream.of(route), route.children().stream().map(child -> child.route()))
                .flatMap(one -> one.operations().stream())
                .flatMap(operation -> operation.characteristics().stream())
                .filter(c -> c.gaugeKind().equals("CONDUCTIVITY") && c.unit().equals("%IACS"))
                .filter(c -> coupons.of(metal, c).isEmpty())
                .map(c -> c.code() + ", " + c.name() + ": the limits are the route's (" + c.source()
                        + "), for the shop has " + coupons.of(metal).size()
                        + " coupons of this metal, and ten are asked for.")
                .distinct()
                .toList();
    }
}
