package org.trammel.shop.handwork;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import org.trammel.shop.gauges.Gauge;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

/** What air and metal are measured with: in date, of the kind, and within its range, or refused. */
@Component
class HandGauges {

    private static final String AIR = "HYGRO";

    /** What may touch or look at metal, the probe of the air's own meter last. */
    private static final List<String> METAL = List.of("CONTACT-TEMP", "IR-TEMP", "THERMOCOUPLE", AIR);

    private final Gauges gauges;
    private final Settings settings;

    HandGauges(Gauges gauges, Settings settings) {
        this.gauges = gauges;
        this.settings = settings;
    }

    /** The meter of the air reads both its temperature and its humidity. */
    String air(String code, BigDecimal degC, BigDecimal percent) {
        one(code, "airGauge", AIR, "°C", degC);
        return one(code, "airGauge", AIR, "%RH", percent);
    }

    String metal(String code, BigDecimal degC) {
        List<String> own = gauges.byCode(code).map(Gauge::ranges).orElse(List.of()).stream()
                .map(GaugeRange::kind)
                .toList();
        String kind = METAL.stream().filter(own::contains).findFirst().orElse(METAL.get(0));
        return one(code, "metalGauge", kind, "°C", degC);
    }

    Map<String, String> usableOnAir() {
        return usable(List.of(AIR));
    }

    Map<String, String> usableOnMetal() {
        return usable(METAL);
    }

    private Map<String, String> usable(List<String> kinds) {
        Map<String, String> usable = new LinkedHashMap<>();
        usable.put("", "choose the one in your hand");
        for (String kind : kinds) {
            for (Means means : gauges.usableFor(kind, "°C", settings.today())) {
                usable.putIfAbsent(means.code(), means.code() + ", " + means.what());
            }
        }
        return usable;
    }

    /** The register names a figure outside the range by the place of a reading; here each has a field of its own. */
    private String one(String code, String field, String kind, String unit, BigDecimal figure) {
        if (code.isBlank()) {
            throw Refusal.input(
                    field,
                    "This is not recorded.",
                    "It is not said what it was read with.",
                    "Choose the gauge in your hand.");
        }
        gauges.keep(List.of(code));
        return gauges.require(code, kind, unit, List.of(figure), settings.today())
                .code();
    }
}
