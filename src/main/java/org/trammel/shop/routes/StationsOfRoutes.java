package org.trammel.shop.routes;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.stations.StationsNamed;

/** The stations that drafts and released routes name, with their operations. */
@Component
class StationsOfRoutes implements StationsNamed {

    private final RevisionRepository revisions;

    StationsOfRoutes(RevisionRepository revisions) {
        this.revisions = revisions;
    }

    @Override
    @Transactional(readOnly = true)
    public Map<String, List<String>> named() {
        Map<String, List<String>> named = new TreeMap<>();
        for (RevisionRepository.AtStation one : revisions.atStations()) {
            List<String> done = named.computeIfAbsent(one.station(), code -> new ArrayList<>());
            if (!done.contains(one.name())) {
                done.add(one.name());
            }
        }
        return named;
    }
}
