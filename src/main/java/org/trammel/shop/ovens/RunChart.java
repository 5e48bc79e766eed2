package org.trammel.shop.ovens;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.LogDrawing;
import org.trammel.calc.thermal.OvenProgramme;
import org.trammel.calc.thermal.OvenStep;
import org.trammel.calc.thermal.RunVerdict;
import org.trammel.calc.thermal.Samples;
import org.trammel.shop.web.LogChartView;

/** Lays out the drawing of a record. */
final class RunChart {

    private static final int COLUMNS = 400;

    private RunChart() {}

    /** @param verdict null where the record gives none; then no soak is shaded */
    static LogChartView of(
            Samples samples, List<Run.Wired> wired, OvenProgramme asked, @Nullable RunVerdict verdict, long gap_ms) {
        Instant from = samples.first();
        Instant until = samples.last();
        List<LogChartView.Line> lines = new ArrayList<>();
        for (Run.Wired one : wired) {
            int channel = samples.channel(one.logColumn());
            if (channel >= 0) {
                lines.add(new LogChartView.Line(
                        one.code() + " " + one.roleWord(),
                        LogChartView.Stroke.valueOf(one.role().name()),
                        LogDrawing.of(samples, channel, from, until, COLUMNS, gap_ms).stream()
                                .map(dot -> new LogChartView.Dot(dot.time_ms(), dot.degC(), dot.joined()))
                                .toList()));
            }
        }
        List<LogChartView.Band> bands = new ArrayList<>();
        for (int i = 0; i < asked.steps().size(); i++) {
            OvenStep step = asked.steps().get(i);
            List<LogChartView.Soak> soaks = verdict == null
                    ? List.of()
                    : verdict.steps().get(i).shades().stream()
                            .map(shade -> new LogChartView.Soak(
                                    shade.from().toEpochMilli(), shade.until().toEpochMilli()))
                            .toList();
            bands.add(new LogChartView.Band("step " + (i + 1), step.least_degC(), step.most_degC(), soaks));
        }
        String finding = "Temperature over the run, " + lines.size() + " thermocouples, "
                + (verdict == null ? "not judged" : RunRelease.word(verdict.judged()))
                + "; the table beside says the same.";
        return new LogChartView(lines, bands, from.toEpochMilli(), until.toEpochMilli(), finding);
    }
}
