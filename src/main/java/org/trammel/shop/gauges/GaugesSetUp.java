package org.trammel.shop.gauges;

import org.springframework.stereotype.Component;
import org.trammel.shop.settings.SetUpPart;

@Component
class GaugesSetUp implements SetUpPart {

    private final Gauges gauges;

    GaugesSetUp(Gauges gauges) {
        this.gauges = gauges;
    }

    @Override
    public int place() {
        return 60;
    }

    @Override
    public State state() {
        int count = gauges.all().size();
        return new State(
                "Gauges",
                count,
                count > 0,
                "Enter each gauge with its range, its uncertainty and the day it falls due.",
                "/shop/gauges");
    }
}
