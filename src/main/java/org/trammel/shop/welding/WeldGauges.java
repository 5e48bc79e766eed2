package org.trammel.shop.welding;

import java.math.BigDecimal;
import java.math.RoundingMode;
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

/** What a weld is measured with: in date, of the kind, and within its range, or refused. */
@Component
class WeldGauges {

    static final List<String> HEAT = List.of("IR-TEMP", "CONTACT-TEMP", "THERMOCOUPLE");
    static final List<String> OXYGEN = List.of("OXYGEN");
    static final List<String> RADIUS = List.of("GO-NO-GO", "FEELER", "CALLIPER");

    private final Gauges gauges;
    private final Settings settings;

    WeldGauges(Gauges gauges, Settings settings) {
        this.gauges = gauges;
        this.settings = settings;
    }

    /** The gauge of that number, of whichever of the kinds it is. */
    Means read(String code, String field, List<String> kinds, String unit, BigDecimal figure, String deed) {
        if (code.isBlank()) {
            throw Refusal.input(field, deed, "It is not said what it was read with.", "Choose the gauge in your hand.");
        }
        List<String> own = gauges.byCode(code).map(Gauge::ranges).orElse(List.of()).stream()
                .map(GaugeRange::kind)
                .toList();
        String kind = kinds.stream().filter(own::contains).findFirst().orElse(kinds.get(0));
        gauges.keep(List.of(code));
        return gauges.require(code, kind, unit, List.of(figure), settings.today());
    }

    /** What the doubt of a reading takes from an upper limit. */
    BigDecimal guard(Means means) {
        return means.u() == null
                ? BigDecimal.ZERO
                : settings.number("guard.factor").multiply(means.u()).setScale(2, RoundingMode.CEILING);
    }

    Map<String, String> usable(List<String> kinds, String unit) {
        Map<String, String> usable = new LinkedHashMap<>();
        usable.put("", "choose the one in your hand");
        for (String kind : kinds) {
            for (Means means : gauges.usableFor(kind, unit, settings.today())) {
                usable.putIfAbsent(means.code(), means.code() + ", " + means.what());
            }
        }
        return usable;
    }
}
