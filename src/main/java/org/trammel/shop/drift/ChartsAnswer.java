package org.trammel.shop.drift;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.ControlChart;

/** A watched axis with everything its page shows. */
record ChartsAnswer(
        SeriesAnswer series,

        @Schema(description = "in force; null while none was taken") @Nullable
        Base base,

        @Schema(description = "that are charted, oldest first: the newest, or those up to the number asked for")
        List<Reading> readings,

        @Schema(description = "older than what the base charts")
        int before,

        List<NotCharted> notCharted,

        @Schema(description = "individuals with steps, weighted mean, cumulative sum; none without a base")
        List<Chart> charts,

        @Schema(description = "every base it had, newest first")
        List<Base> bases,

        @Schema(description = "readings from before this program that count no more")
        List<StruckOut> struckOut) {

    record Reading(
            int number,

            @Schema(description = "of a reading from before this program, to strike it out; else null") @Nullable
            Long earlier,

            String frame,
            @Nullable String part,
            Instant at,
            BigDecimal value,
            @Nullable BigDecimal nominal,
            @Nullable BigDecimal lowerLimit,
            @Nullable BigDecimal upperLimit,

            @Schema(description = "what the chart shows") double shown,

            List<String> alarms) {}

    record NotCharted(String frame, Instant at, String why) {}

    record Chart(ControlChart.Kind kind, List<Trace> traces) {}

    record Trace(ControlChart.Plotted plotted, double centre, List<Place> points) {}

    @Schema(name = "DriftChartPoint")
    record Place(
            @Schema(description = "of its reading, from 1") int number, double value, double lower, double upper) {}

    record StruckOut(String frame, Instant at, BigDecimal value, String reason, Instant since) {}

    static ChartsAnswer of(Charted of, List<Base> bases, List<Struck> struck, Welders welders) {
        return new ChartsAnswer(
                SeriesAnswer.of(of.standing(), welders),
                of.base(),
                readings(of),
                of.standing().kept().before(),
                of.left().stream()
                        .map(left -> new NotCharted(
                                left.point().frame(), left.point().at(), left.why()))
                        .toList(),
                of.charts().stream().map(ChartsAnswer::chart).toList(),
                bases,
                struck.stream()
                        .map(each -> new StruckOut(
                                each.point().frame(),
                                each.point().at(),
                                each.point().value(),
                                each.reason(),
                                each.at()))
                        .toList());
    }

    private static List<Reading> readings(Charted of) {
        Map<Integer, List<ControlChart.Alarm>> alarms =
                of.alarms().stream().collect(Collectors.groupingBy(ControlChart.Alarm::index));
        return of.rows().stream()
                .map(row -> reading(row, alarms.getOrDefault(row.state().number() - 1, List.of())))
                .toList();
    }

    private static Reading reading(KeptRow row, List<ControlChart.Alarm> alarms) {
        Point point = row.point();
        return new Reading(
                row.state().number(),
                point.historyId(),
                point.frame(),
                point.part(),
                point.at(),
                point.value(),
                point.nominal(),
                point.lowerLimit(),
                point.upperLimit(),
                row.value(),
                alarms.stream().map(ControlChart.Alarm::words).toList());
    }

    private static Chart chart(ControlChart chart) {
        return new Chart(
                chart.kind(),
                chart.traces().stream()
                        .map(trace -> new Trace(
                                trace.plotted(),
                                trace.centre(),
                                trace.points().stream()
                                        .map(p -> new Place(p.index() + 1, p.value(), p.lower(), p.upper()))
                                        .toList()))
                        .toList());
    }
}
