package org.trammel.shop.cuts;

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

/** What cuts and saws are measured with: in date, of the kind, and within its range, or refused. */
@Component
class CutGauges {

    static final List<String> LENGTH = List.of("SCALE-RULE", "CALLIPER");
    static final List<String> OUTSIDE = List.of("CALLIPER");
    private static final List<String> WALL = List.of("WALL", "CALLIPER");
    private static final List<String> ANGLE = List.of("PROTRACTOR");
    private static final List<String> PHASE = List.of("LEVEL");
    private static final List<String> GAP = List.of("FEELER");

    private final Gauges gauges;
    private final Settings settings;

    CutGauges(Gauges gauges, Settings settings) {
        this.gauges = gauges;
        this.settings = settings;
    }

    Means length(String code, String field, List<String> kinds, BigDecimal... mm) {
        return one(code, field, kinds, "mm", List.of(mm));
    }

    Means angle(String code, List<BigDecimal> deg) {
        return one(code, "angleGauge", ANGLE, "°", deg);
    }

    Means phase(String code, BigDecimal deg) {
        return one(code, "phaseGauge", PHASE, "°", List.of(deg));
    }

    Means gap(String code, List<BigDecimal> mm) {
        return one(code, "gapGauge", GAP, "mm", mm);
    }

    Means wall(String code, List<BigDecimal> mm) {
        return one(code, "wallGauge", WALL, "mm", mm);
    }

    /** What a figure was read with, as it may be used now. */
    Means of(CutFigure figure, String code) {
        return switch (figure) {
            case LENGTH -> one(code, "lengthGauge", LENGTH, "mm", List.of());
            case ANGLE -> one(code, "angleGauge", ANGLE, "°", List.of());
            case PHASE -> one(code, "phaseGauge", PHASE, "°", List.of());
            case GAP -> one(code, "gapGauge", GAP, "mm", List.of());
            case WALL -> one(code, "wallGauge", WALL, "mm", List.of());
        };
    }

    /** By the field of the form each is chosen in. */
    Map<String, Map<String, String>> usable() {
        return Map.of(
                "lengthGauge", usable(LENGTH, "mm"),
                "angleGauge", usable(ANGLE, "°"),
                "phaseGauge", usable(PHASE, "°"),
                "gapGauge", usable(GAP, "mm"),
                "wallGauge", usable(WALL, "mm"),
                "gauge", usable(OUTSIDE, "mm"));
    }

    private Map<String, String> usable(List<String> kinds, String unit) {
        Map<String, String> usable = new LinkedHashMap<>();
        usable.put("", "choose the one in your hand");
        for (String kind : kinds) {
            for (Means means : gauges.usableFor(kind, unit, settings.today())) {
                usable.putIfAbsent(means.code(), means.code() + ", " + means.what());
            }
        }
        return usable;
    }

    /** The register names a figure outside the range by the place of a reading; here each has a field of its own. */
    private Means one(String code, String field, List<String> kinds, String unit, List<BigDecimal> figures) {
        if (code.isBlank()) {
            throw Refusal.input(
                    field,
                    "This is not recorded.",
                    "It is not said what it was read with.",
                    "Choose the gauge in your hand.");
        }
        List<String> own = gauges.byCode(code).map(Gauge::ranges).orElse(List.of()).stream()
                .map(GaugeRange::kind)
                .toList();
        gauges.keep(List.of(code));
        String kind = kinds.stream().filter(own::contains).findFirst().orElse(kinds.get(0));
        return gauges.require(code, kind, unit, figures, settings.today());
    }
}
