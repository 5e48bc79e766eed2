package org.trammel.shop.drift;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.statistics.Capability;
import org.trammel.calc.statistics.Histogram;
import org.trammel.calc.statistics.Normality;
import org.trammel.calc.statistics.Shape;
import org.trammel.calc.statistics.Tolerance;
import org.trammel.calc.units.Answer;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

/** Compares what was read of an axis with its limits. */
@Service
@Transactional(readOnly = true)
class AxisFits {

    private static final BigDecimal MOST_WANTED = new BigDecimal("100");
    private static final String NOT = "Nothing was compared.";

    private final DriftCharts charts;
    private final Settings settings;

    AxisFits(DriftCharts charts, Settings settings) {
        this.charts = charts;
        this.settings = settings;
    }

    /**
     * What is asked.
     *
     * @param limits the key of one of the choices; empty for those of most readings
     * @param wanted the index that is asked for
     */
    record Asked(
            Shape shape,
            BigDecimal wanted,
            String limits,
            @Nullable LocalDate from,
            @Nullable LocalDate until) {}

    private record Read(Point point, double shown) {}

    AxisFit of(long seriesId, Asked asked) {
        if (asked.wanted().signum() <= 0 || asked.wanted().compareTo(MOST_WANTED) > 0) {
            throw Refusal.input(
                    "wanted",
                    NOT,
                    "An index of " + asked.wanted().toPlainString() + " is not above 0 and at most 100.",
                    "1.33 is usual.");
        }
        Standing of = charts.standing(seriesId);
        Map<String, List<Read>> byLimits = new LinkedHashMap<>();
        Map<String, AxisFit.Limits> limits = new LinkedHashMap<>();
        Period period = Period.of(asked.from(), asked.until(), settings.zone());
        for (KeptRow row : charts.chartable(of.series())) {
            if (period.holds(row.point())) {
                AxisFit.Limits own = limits(of.series(), row.point());
                limits.putIfAbsent(own.key(), own);
                byLimits.computeIfAbsent(own.key(), key -> new ArrayList<>()).add(new Read(row.point(), row.value()));
            }
        }
        List<AxisFit.Limits> choices = byLimits.entrySet().stream()
                .map(each -> new AxisFit.Limits(
                        limits.get(each.getKey()).lower(),
                        limits.get(each.getKey()).upper(),
                        each.getValue().size()))
                .sorted(Comparator.comparing(AxisFit.Limits::readings).reversed())
                .toList();
        AxisFit.Limits chosen = choices.stream()
                .filter(each -> each.key().equals(asked.limits()))
                .findFirst()
                .orElse(choices.isEmpty() ? null : choices.get(0));
        return fit(of, choices, chosen, chosen == null ? List.of() : byLimits.get(chosen.key()), asked);
    }

    private static AxisFit fit(
            Standing of, List<AxisFit.Limits> choices, AxisFit.@Nullable Limits chosen, List<Read> read, Asked asked) {
        List<Double> values = read.stream().map(Read::shown).toList();
        Answer<Capability> capability = chosen == null
                ? Answer.none("readings", "Nothing was read in this time.")
                : Capability.of(values, new Tolerance(figure(chosen.lower()), figure(chosen.upper())), asked.shape());
        return new AxisFit(
                of.series(),
                of.stand(),
                choices,
                chosen,
                read.stream().map(Read::point).toList(),
                values,
                choices.stream().mapToInt(AxisFit.Limits::readings).sum() - read.size(),
                asked.shape(),
                asked.wanted(),
                capability,
                Normality.of(values),
                Histogram.of(values));
    }

    private static @Nullable Double figure(@Nullable BigDecimal figure) {
        return figure == null ? null : figure.doubleValue();
    }

    /** On a chart of shares, limits about the middle are one half tolerance away from it. */
    private static AxisFit.Limits limits(Series series, Point point) {
        BigDecimal nominal = point.nominal() == null ? BigDecimal.ZERO : point.nominal();
        BigDecimal lower =
                point.lowerLimit() == null ? null : point.lowerLimit().subtract(nominal);
        BigDecimal upper =
                point.upperLimit() == null ? null : point.upperLimit().subtract(nominal);
        if (series.scaled() && lower != null && upper != null) {
            BigDecimal half = upper.subtract(lower).divide(BigDecimal.valueOf(2));
            lower = lower.divide(half, 6, java.math.RoundingMode.HALF_EVEN);
            upper = upper.divide(half, 6, java.math.RoundingMode.HALF_EVEN);
        }
        return new AxisFit.Limits(plain(lower), plain(upper), 0);
    }

    private static @Nullable BigDecimal plain(@Nullable BigDecimal figure) {
        if (figure == null) {
            return null;
        }
        BigDecimal shown = figure.stripTrailingZeros();
        return shown.scale() < 0 ? shown.setScale(0) : shown;
    }
}
