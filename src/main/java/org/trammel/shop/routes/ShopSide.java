package org.trammel.shop.routes;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;

/** What the shop has that routes name. */
@Component
class ShopSide {

    private final Stations stations;
    private final Settings settings;

    ShopSide(Stations stations, Settings settings) {
        this.stations = stations;
        this.settings = settings;
    }

    RouteCheck.Shop side() {
        Set<String> codes = stations.all().stream().map(Station::code).collect(Collectors.toSet());
        Set<String> aids = Arrays.stream(settings.text("gauge.aids").split(","))
                .map(String::strip)
                .collect(Collectors.toSet());
        return new RouteCheck.Shop(codes, aids);
    }
}
