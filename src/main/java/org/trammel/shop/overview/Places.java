package org.trammel.shop.overview;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.stations.Station;

/** Names of stations, read once for a page; a code that is no longer in use stays as it is. */
final class Places {

    /** Where an operation without a station is done. */
    static final String DESIGN_DESK = "Design desk";

    private final Map<String, String> names;

    Places(List<Station> stations) {
        this.names = stations.stream().collect(Collectors.toMap(Station::code, Station::name));
    }

    String name(@Nullable String code) {
        return code == null || code.isEmpty() ? DESIGN_DESK : names.getOrDefault(code, code);
    }
}
