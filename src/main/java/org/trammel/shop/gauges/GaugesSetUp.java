package org.trammel.shop.gauges;

import java.util.List;
import org.springframework.stereotype.Component;
import org.trammel.shop.settings.SetUpPart;
import org.trammel.shop.settings.Settings;

/** Nothing can be measured before a gauge is in date. */
@Component
class GaugesSetUp implements SetUpPart {

    private final Gauges gauges;
    private final Settings settings;

    GaugesSetUp(Gauges gauges, Settings settings) {
        this.gauges = gauges;
        this.settings = settings;
    }

    @Override
    public int place() {
        return 60;
    }

    @Override
    public State state() {
        List<Gauge> here = gauges.all().stream()
                .filter(gauge -> gauge.state() != GaugeState.RETIRED)
                .toList();
        boolean inDate = here.stream()
                .anyMatch(gauge -> gauge.state() == GaugeState.IN_USE
                        && gauge.dueOn() != null
                        && !gauge.dueOn().isBefore(settings.today()));
        return new State(
                "Gauges",
                here.size(),
                inDate,
                inDate
                        ? "Register every gauge a route asks for."
                        : "Register the gauges and record their calibrations; a reading needs one in date.",
                "/shop/gauges");
    }
}
