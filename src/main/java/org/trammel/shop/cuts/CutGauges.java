package org.trammel.shop.cuts;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
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

    /** What a figure was read with, on the day it was read: whatever fell due since. */
    Means of(CutFigure figure, String code, Instant at) {
        LocalDate on = settings.dayOf(at);
        return switch (figure) {
            case LENGTH -> gauges.asOf(code, kind(code, LENGTH), "mm", on);
            case ANGLE -> gauges.asOf(code, kind(code, ANGLE), "°", on);
            case PHASE -> gauges.asOf(code, kind(code, PHASE), "°", on);
            case GAP -> gauges.asOf(code, kind(code, GAP), "mm", on);
            case WALL -> gauges.asOf(code, kind(code, WALL), "mm", on);
        };
    }

    /** Those whose gauges were not found wrong since: what one that was read counts no more. */
    List<Cut> standing(Collection<Cut> cuts) {
        Map<String, Instant> wrong = gauges.lastFoundWrong(
                cuts.stream().flatMap(cut -> cut.with().all()).collect(Collectors.toSet()));
        return cuts.stream()
                .filter(cut -> cut.with()
                        .all()
                        .noneMatch(code -> wrong.containsKey(code) && cut.at().isBefore(wrong.get(code))))
                .toList();
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
        gauges.keep(List.of(code));
        return gauges.require(code, kind(code, kinds), unit, figures, settings.today());
    }

    private String kind(String code, List<String> kinds) {
        List<String> own = gauges.byCode(code).map(Gauge::ranges).orElse(List.of()).stream()
                .map(GaugeRange::kind)
                .toList();
        return kinds.stream().filter(own::contains).findFirst().orElse(kinds.get(0));
    }
}
