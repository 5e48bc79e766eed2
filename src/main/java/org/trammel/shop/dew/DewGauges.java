package org.trammel.shop.dew;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.springframework.stereotype.Service;
import org.trammel.shop.gauges.Gauge;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.ovens.Ovens;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

/** What air and metal are measured with: in date, of the kind, and within its range, or refused. */
@Service
public class DewGauges {

    private static final String AIR = "HYGRO";

    /** What may touch or look at metal, the probe of the air's own meter last. */
    private static final List<String> METAL = List.of("CONTACT-TEMP", "IR-TEMP", "THERMOCOUPLE", AIR);

    private final Gauges gauges;
    private final Ovens ovens;
    private final Settings settings;

    DewGauges(Gauges gauges, Ovens ovens, Settings settings) {
        this.gauges = gauges;
        this.ovens = ovens;
        this.settings = settings;
    }

    /** The meter of the air reads both its temperature and its humidity. */
    Means air(String code, BigDecimal degC, BigDecimal percent) {
        one(code, "airGauge", AIR, "°C", degC);
        return one(code, "airGauge", AIR, "%RH", percent);
    }

    Means metal(String code, List<BigDecimal> degC) {
        String oven = fitted().get(code.strip().toUpperCase(Locale.ROOT));
        if (oven != null) {
            throw Refusal.input(
                    "metalGauge",
                    "This is not recorded.",
                    code.strip() + " is fitted in " + oven + " and reads no frame outside it.",
                    "Choose what was held to the frame.");
        }
        List<String> own = gauges.byCode(code).map(Gauge::ranges).orElse(List.of()).stream()
                .map(GaugeRange::kind)
                .toList();
        String kind = METAL.stream().filter(own::contains).findFirst().orElse(METAL.get(0));
        Means means = one(code, "metalGauge", kind, "°C", degC.get(0));
        degC.stream().skip(1).forEach(more -> one(code, "metalGauge", kind, "°C", more));
        return means;
    }

    public Map<String, String> usableOnAir() {
        return usable(List.of(AIR));
    }

    public Map<String, String> usableOnMetal() {
        Map<String, String> usable = usable(METAL);
        usable.keySet().removeAll(fitted().keySet());
        return usable;
    }

    /** Ovens by the thermocouples that are in them. */
    private Map<String, String> fitted() {
        Map<String, String> fitted = new HashMap<>();
        ovens.all().forEach(oven -> oven.fitted().forEach(one -> fitted.put(one.code(), oven.code())));
        return fitted;
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
    private Means one(String code, String field, String kind, String unit, BigDecimal figure) {
        if (code.isBlank()) {
            throw Refusal.input(
                    field,
                    "This is not recorded.",
                    "It is not said what it was read with.",
                    "Choose the gauge in your hand.");
        }
        gauges.keep(List.of(code));
        return gauges.require(code, kind, unit, List.of(figure), settings.today());
    }
}
