package org.trammel.shop.coats;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.coating.FilmGauge;
import org.trammel.shop.gauges.Gauge;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

/** What the surface and coat are measured with: in date, of the kind, and within its range, or refused. */
@Component
class CoatGauges {

    static final String PRESSURE = "PRESSURE";
    static final String EARTH = "OHM";
    static final String TAPE = "TAPE";
    static final String FEELER = "FEELER";

    private static final String EDDY = "FILM-EDDY";
    private static final String MAGNET = "FILM-MAGNETIC";
    private static final String LOOK = "GLOSS";

    private final Gauges gauges;
    private final Settings settings;

    CoatGauges(Gauges gauges, Settings settings) {
        this.gauges = gauges;
        this.settings = settings;
    }

    Means pressure(String code, BigDecimal bar) {
        return one(code, "gauge", PRESSURE, "bar", bar);
    }

    Means earth(String code, BigDecimal megohm) {
        return one(code, "gauge", EARTH, "MΩ", megohm);
    }

    /** The line of a film from its landmark. */
    Means line(@Nullable String code, List<BigDecimal> both_mm) {
        return read(code, "gauge", TAPE, "mm", both_mm);
    }

    /** How far a colour ran under an edge. */
    Means edge(@Nullable String code, BigDecimal mm) {
        return read(code, "gauge", FEELER, "mm", List.of(mm));
    }

    static FilmGauge.Metal filmMetal(String metal) {
        return switch (metal) {
            case "STEEL" -> FilmGauge.Metal.STEEL;
            case "TI" -> FilmGauge.Metal.TITANIUM;
            default -> FilmGauge.Metal.ALUMINIUM;
        };
    }

    /** By what a gauge feels the metal; of one that knows both ways, the one that fits. */
    FilmGauge principle(String code, FilmGauge.Metal metal, String deed) {
        List<String> own = gauges.byCode(code).map(Gauge::ranges).orElse(List.of()).stream()
                .map(GaugeRange::kind)
                .toList();
        FilmGauge fits = FilmGauge.EDDY_CURRENT.fits(metal) ? FilmGauge.EDDY_CURRENT : FilmGauge.MAGNETIC;
        FilmGauge other = fits == FilmGauge.MAGNETIC ? FilmGauge.EDDY_CURRENT : FilmGauge.MAGNETIC;
        if (!own.contains(kind(fits)) && own.contains(kind(other))) {
            throw Refusal.input(
                    "gauge", deed, other.words(metal), "Take such a gauge, and read the whole map again with it.");
        }
        return fits;
    }

    private static String kind(FilmGauge principle) {
        return principle == FilmGauge.MAGNETIC ? MAGNET : EDDY;
    }

    Means film(String code, FilmGauge principle, List<BigDecimal> readings_um) {
        gauges.keep(List.of(code));
        return gauges.require(code, kind(principle), "µm", readings_um, settings.today());
    }

    /** What reads gloss and colour; its unit is its own. */
    String look(String code) {
        String unit = gauges.byCode(code).map(Gauge::ranges).orElse(List.of()).stream()
                .filter(range -> range.kind().equals(LOOK))
                .map(GaugeRange::unit)
                .findFirst()
                .orElse("");
        gauges.keep(List.of(code));
        return gauges.require(code, LOOK, unit, List.of(), settings.today()).code();
    }

    Map<String, String> usableOnFilm(String metal) {
        return usable(FilmGauge.EDDY_CURRENT.fits(filmMetal(metal)) ? EDDY : MAGNET, "µm");
    }

    /** Those that read gloss or colour, in whatever unit. */
    Map<String, String> usableOnLook() {
        Map<String, String> usable = new LinkedHashMap<>();
        usable.put("", "choose the one in your hand");
        gauges.all().stream()
                .flatMap(gauge -> gauge.ranges().stream())
                .filter(range -> range.kind().equals(LOOK))
                .map(GaugeRange::unit)
                .distinct()
                .forEach(unit -> usable(LOOK, unit).forEach(usable::putIfAbsent));
        return usable;
    }

    Map<String, String> usable(String kind, String unit) {
        Map<String, String> usable = new LinkedHashMap<>();
        usable.put("", "choose the one in your hand");
        for (Means means : gauges.usableFor(kind, unit, settings.today())) {
            usable.put(means.code(), means.code() + ", " + means.what());
        }
        return usable;
    }

    /** The register names a figure outside the range by the place of a reading; here each has a field of its own. */
    private Means one(String code, String field, String kind, String unit, BigDecimal figure) {
        return read(code, field, kind, unit, List.of(figure));
    }

    private Means read(@Nullable String code, String field, String kind, String unit, List<BigDecimal> figures) {
        if (code == null || code.isBlank()) {
            throw Refusal.input(
                    field,
                    "This is not recorded.",
                    "It is not said what it was read with.",
                    "Choose the gauge in your hand.");
        }
        gauges.keep(List.of(code));
        return gauges.require(code, kind, unit, figures, settings.today());
    }
}
