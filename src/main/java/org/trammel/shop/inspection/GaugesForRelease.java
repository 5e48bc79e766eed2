package org.trammel.shop.inspection;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.units.DecimalSign;
import org.trammel.shop.designs.DesignSheet;
import org.trammel.shop.designs.Nominal;
import org.trammel.shop.designs.ReleaseWarnings;
import org.trammel.shop.gauges.GaugeKind;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.RouteBook;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.settings.Settings;

/**
 * Says before a frame is released what the shop could not measure on it today: no gauge of the kind is in date, none
 * reaches the nominal, none has an uncertainty where the rule asks for one, or the finest is coarse for the tolerance.
 */
@Component
class GaugesForRelease implements ReleaseWarnings {

    private static final int NAMED = 6;

    private final RouteBook routes;
    private final Gauges gauges;
    private final Settings settings;

    GaugesForRelease(RouteBook routes, Gauges gauges, Settings settings) {
        this.routes = routes;
        this.gauges = gauges;
        this.settings = settings;
    }

    /** What is to be measured, and on which value; null where there is no nominal. */
    private record Wanted(
            String code,
            CharacteristicSheet sheet,
            @Nullable BigDecimal nominal,
            @Nullable BigDecimal lower,
            @Nullable BigDecimal upper) {

        static Wanted of(String prefix, CharacteristicSheet sheet, Map<String, Nominal> nominals) {
            Nominal given = nominals.get(prefix + sheet.code());
            boolean own = given != null && given.overridesLimits();
            return new Wanted(
                    prefix + sheet.code(),
                    sheet,
                    given == null ? sheet.nominal() : given.nominal(),
                    own ? given.lowerDeviation() : sheet.lowerDeviation(),
                    own ? given.upperDeviation() : sheet.upperDeviation());
        }
    }

    /** A kind of gauge, and the unit it is to read. */
    private record Kind(String code, String unit) {}

    @Override
    @Transactional(readOnly = true)
    public List<String> of(DesignSheet revision) {
        if (revision.routeRevisionId() == null) {
            return List.of();
        }
        Map<Kind, List<Wanted>> byKind = wanted(routes.revision(revision.routeRevisionId()), revision.nominals())
                .collect(Collectors.groupingBy(
                        w -> new Kind(w.sheet().gaugeKind(), w.sheet().unit()),
                        LinkedHashMap::new,
                        Collectors.toList()));
        Map<String, String> names = gauges.kinds().stream().collect(Collectors.toMap(GaugeKind::code, GaugeKind::name));
        List<String> warnings = new ArrayList<>();
        byKind.forEach((kind, all) -> warnings.addAll(of(
                kind, names.getOrDefault(kind.code(), kind.code()).toLowerCase(Locale.ROOT), all, settings.today())));
        return warnings;
    }

    private static Stream<Wanted> wanted(RouteSheet route, Map<String, Nominal> nominals) {
        return Stream.concat(
                ofRoute("", route, nominals),
                route.children().stream().flatMap(child -> ofRoute(child.part() + "/", child.route(), nominals)));
    }

    private static Stream<Wanted> ofRoute(String prefix, RouteSheet route, Map<String, Nominal> nominals) {
        return route.operations().stream()
                .flatMap(operation -> operation.characteristics().stream())
                .map(sheet -> Wanted.of(prefix, sheet, nominals));
    }

    private List<String> of(Kind kind, String name, List<Wanted> all, LocalDate today) {
        List<Means> usable = gauges.usableFor(kind.code(), kind.unit(), today);
        if (usable.isEmpty()) {
            return List.of("No " + name + " that reads " + (kind.unit().isEmpty() ? "yes or no" : kind.unit())
                    + " is in use and in date: " + codes(all) + ".");
        }
        Map<BigDecimal, List<Means>> reaching = gauges.reaching(
                kind.code(),
                kind.unit(),
                all.stream().map(Wanted::nominal).filter(Objects::nonNull).collect(Collectors.toSet()),
                today);
        Map<String, List<Wanted>> lacking = new LinkedHashMap<>();
        List<String> coarse = new ArrayList<>();
        for (Wanted one : all) {
            List<Means> able = one.nominal() == null ? usable : reaching.get(one.nominal());
            if (able.isEmpty()) {
                String unreached = "No " + name + " in date reaches " + figure(one.nominal()) + " " + kind.unit();
                lacking.computeIfAbsent(unreached, u -> new ArrayList<>()).add(one);
            } else if (able.get(0).u() == null && one.sheet().rule() == Rule.GUARDED) {
                lacking.computeIfAbsent(
                                "No " + name + " in date has the uncertainty that the guarded rule asks for",
                                u -> new ArrayList<>())
                        .add(one);
            } else {
                gauges.coarse(able.get(0), one.lower(), one.upper())
                        .ifPresent(sentence ->
                                coarse.add(one.code() + ", " + one.sheet().name() + ": " + sentence));
            }
        }
        return Stream.concat(
                        lacking.entrySet().stream().map(lack -> lack.getKey() + ": " + codes(lack.getValue()) + "."),
                        coarse.stream())
                .toList();
    }

    private static String codes(List<Wanted> all) {
        String first = all.stream().limit(NAMED).map(Wanted::code).collect(Collectors.joining(", "));
        return all.size() <= NAMED ? first : first + " and " + (all.size() - NAMED) + " more";
    }

    private String figure(@Nullable BigDecimal number) {
        return DecimalSign.of(settings.locale())
                .write(Objects.requireNonNull(number).stripTrailingZeros());
    }
}
