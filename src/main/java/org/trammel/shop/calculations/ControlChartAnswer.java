package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.trammel.calc.statistics.Baseline;
import org.trammel.calc.statistics.ControlChart;
import org.trammel.calc.statistics.RunRule;

/** A chart ready to be drawn, and its alarms in words. */
record ControlChartAnswer(
        ControlChart.Kind kind,
        FrozenBase base,

        @Schema(description = "in the order they stand, the first one above")
        List<ChartTrace> traces,

        @Schema(description = "in the order of readings; empty if the process stands still")
        List<ChartAlarm> alarms,

        @Schema(
                description =
                        "what speaks against the base: few readings, alarms inside it, neighbours that resemble each"
                                + " other; looked for where the base came as readings without sigma")
        List<String> doubts) {

    @Schema(description = "in the unit of the readings; centre and sigma may be sent as the base of a later chart")
    record FrozenBase(
            double centre,

            @Schema(description = "standard deviation of a single reading")
            double sigma,

            @Schema(description = "of readings or groups; 0 where centre and sigma were sent")
            int count,

            @Schema(description = "readings in a group; 1 for single readings")
            int groupSize,

            @Schema(description = "where sigma comes from") Baseline.Origin origin) {}

    @Schema(description = "all figures in the unit of the readings")
    record ChartTrace(
            ControlChart.Plotted plotted,
            double centre,

            @Schema(description = "one for each reading or group; a step has none for the first reading")
            List<ChartPoint> points) {

        static ChartTrace of(ControlChart.Trace trace) {
            return new ChartTrace(
                    trace.plotted(),
                    trace.centre(),
                    trace.points().stream().map(ChartPoint::of).toList());
        }
    }

    record ChartPoint(
            @Schema(description = "of its reading or group, counted from 1")
            int number,

            double value,
            @Schema(description = "control limit there") double lower,
            @Schema(description = "control limit there") double upper) {

        static ChartPoint of(ControlChart.Point point) {
            return new ChartPoint(point.index() + 1, point.value(), point.lower(), point.upper());
        }
    }

    record ChartAlarm(
            @Schema(description = "of its reading or group, counted from 1")
            int number,

            ControlChart.Plotted plotted,
            RunRule rule,
            double value,

            @Schema(description = "the limit it is beyond, or the centre line of the pattern it completes")
            double bound,

            String words) {

        static ChartAlarm of(ControlChart.Alarm alarm) {
            return new ChartAlarm(
                    alarm.index() + 1, alarm.plotted(), alarm.rule(), alarm.value(), alarm.bound(), alarm.words());
        }
    }

    static ControlChartAnswer of(ControlChart chart, List<String> doubts) {
        Baseline base = chart.baseline();
        return new ControlChartAnswer(
                chart.kind(),
                new FrozenBase(base.mean(), base.sigma(), base.count(), base.size(), base.origin()),
                chart.traces().stream().map(ChartTrace::of).toList(),
                chart.alarms().stream().map(ChartAlarm::of).toList(),
                doubts);
    }
}
