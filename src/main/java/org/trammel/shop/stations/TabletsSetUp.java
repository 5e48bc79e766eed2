package org.trammel.shop.stations;

import org.springframework.stereotype.Component;
import org.trammel.shop.settings.SetUpPart;

@Component
class TabletsSetUp implements SetUpPart {

    private final Devices devices;

    TabletsSetUp(Devices devices) {
        this.devices = devices;
    }

    @Override
    public int place() {
        return 20;
    }

    @Override
    public State state() {
        long count = devices.tablets().stream()
                .filter(tablet -> !tablet.withdrawn() && tablet.tokenAt() != null)
                .count();
        return new State("Tablets", count, count > 0, "Make a code and type it once at each tablet.", "/shop/stations");
    }
}
