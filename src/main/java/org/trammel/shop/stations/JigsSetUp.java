package org.trammel.shop.stations;

import java.util.List;
import org.springframework.stereotype.Component;
import org.trammel.shop.settings.SetUpPart;

/** A frame names the jig it was set up in; one that the QA lead has stopped takes none. */
@Component
class JigsSetUp implements SetUpPart {

    private final Stations stations;

    JigsSetUp(Stations stations) {
        this.stations = stations;
    }

    @Override
    public int place() {
        return 15;
    }

    @Override
    public State state() {
        List<Jig> jigs = stations.jigs();
        return new State(
                "Jigs",
                jigs.size(),
                jigs.stream().anyMatch(jig -> !jig.stopped()),
                "Enter each jig at its station, with the day of its last check.",
                "/shop/stations");
    }
}
