package org.trammel.shop.stations;

import org.springframework.stereotype.Component;
import org.trammel.shop.settings.SetUpPart;

@Component
class StationsSetUp implements SetUpPart {

    private final Stations stations;

    StationsSetUp(Stations stations) {
        this.stations = stations;
    }

    @Override
    public int place() {
        return 10;
    }

    @Override
    public State state() {
        int count = stations.all().size();
        return new State(
                "Stations", count, count > 0, "Enter the stations in the order work passes them.", "/shop/stations");
    }
}
