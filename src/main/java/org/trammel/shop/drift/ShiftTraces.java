package org.trammel.shop.drift;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.statistics.Attribution;
import org.trammel.calc.units.Answer;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

/**
 * Traces a shift to jig, welder or tube set: all readings of an axis that is watched on jigs, whatever jig they come from.
 */
@Service
@Transactional(readOnly = true)
public class ShiftTraces {

    /** A comparison of more takes longer than a page may. */
    private static final int MOST_READINGS = 2000;

    private static final int MOST_LEVELS = 120;
    private static final String NOT = "Nothing was compared.";

    private final DriftCharts charts;
    private final SeriesPoints points;
    private final Settings settings;

    ShiftTraces(DriftCharts charts, SeriesPoints points, Settings settings) {
        this.charts = charts;
        this.points = points;
        this.settings = settings;
    }

    /**
     * What is to be compared.
     *
     * @param code of the characteristic
     * @param scaled by the half tolerance; else deviations in the unit
     */
    record Asked(
            String code,
            List<Factor> factors,
            @Nullable LocalDate from,
            @Nullable LocalDate until,
            boolean scaled) {}

    /** Characteristics that are watched on jigs. */
    List<ShiftTrace.Axis> axes() {
        Map<String, ShiftTrace.Axis> axes = new LinkedHashMap<>();
        charts.watched().stream()
                .filter(each -> each.by() == Factor.JIG)
                .forEach(each ->
                        axes.putIfAbsent(each.code(), new ShiftTrace.Axis(each.code(), each.name(), each.unit())));
        return List.copyOf(axes.values());
    }

    ShiftTrace of(Asked asked, Welders welders) {
        ShiftTrace.Axis axis = axes().stream()
                .filter(each -> each.code().equals(asked.code()))
                .findFirst()
                .orElseThrow(() -> Refusal.missing(
                        NOT, "No jig is watched for " + asked.code() + ".", "Choose one of the watched axes."));
        if (asked.factors().isEmpty()) {
            throw Refusal.input(
                    "factors",
                    NOT,
                    "Nothing is chosen that readings could hang on.",
                    "Choose jig, welder or tube set.");
        }
        List<Point> all = Period.of(asked.from(), asked.until(), settings.zone())
                .of(points.read(Set.of(axis.code()), Set.copyOf(asked.factors()))
                        .getOrDefault(axis.code(), List.of()));
        List<ShiftTrace.Used> used = new ArrayList<>();
        for (Point point : all) {
            used(point, axis, asked, welders).ifPresent(used::add);
        }
        int left = all.size() - used.size();
        if (used.size() > MOST_READINGS) {
            throw tooMuch(used.size() + " readings are more than " + MOST_READINGS + ".");
        }
        for (Factor factor : asked.factors()) {
            long levels = used.stream()
                    .map(each -> each.levels().get(factor))
                    .distinct()
                    .count();
            if (levels > MOST_LEVELS) {
                throw tooMuch("They come from " + levels + " of " + factor.word() + ", more than " + MOST_LEVELS + ".");
            }
        }
        return new ShiftTrace(axis, asked.scaled(), asked.factors(), used, left, found(asked.factors(), used));
    }

    private static Refusal tooMuch(String why) {
        return Refusal.input("from", NOT, why, "Choose a shorter period.");
    }

    private static Optional<ShiftTrace.Used> used(Point point, ShiftTrace.Axis axis, Asked asked, Welders welders) {
        if (!point.unit().equals(axis.unit())
                || !(point.charted(asked.scaled()) instanceof Answer.Determined<Double> shown)) {
            return Optional.empty();
        }
        Map<Factor, String> levels = new EnumMap<>(Factor.class);
        for (Factor factor : asked.factors()) {
            String level = point.level(factor);
            if (level == null) {
                return Optional.empty();
            }
            levels.put(factor, welders.of(factor, level));
        }
        return Optional.of(new ShiftTrace.Used(point, shown.value(), levels));
    }

    private static Answer<Attribution> found(List<Factor> factors, List<ShiftTrace.Used> used) {
        return Attribution.of(
                factors.stream().map(Factor::word).toList(),
                used.stream()
                        .map(each -> new Attribution.Reading(
                                each.shown(),
                                each.levels().entrySet().stream()
                                        .collect(Collectors.toMap(
                                                level -> level.getKey().word(), Map.Entry::getValue))))
                        .toList());
    }
}
