package org.trammel.shop.drift;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.Capability;
import org.trammel.calc.statistics.Histogram;
import org.trammel.calc.statistics.Shape;
import org.trammel.calc.units.Answer;

/** How what is read of an axis fits between its limits; figures in the unit of the chart. */
record FitAnswer(
        Factor by,
        @Nullable String of,
        String code,
        String unit,

        @Schema(description = "limits that frames had, as deviations from the nominal")
        List<AxisFit.Limits> choices,

        @Schema(description = "those compared with; null if nothing was read")
        AxisFit.@Nullable Limits limits,

        List<Double> values,
        Shape shape,

        @Schema(description = "null where there are no indices, as why says") @Nullable
        Indices indices,

        @Schema(description = "why there are no indices") List<String> why,

        @Schema(description = "what the chart says against an index; empty if nothing")
        String doubt,

        List<Histogram.Bin> histogram) {

    record Indices(
            double mean,
            double standardDeviation,
            Capability.@Nullable Index pp,
            Capability.Index ppk,
            Shape.Percentiles percentiles,
            String words) {}

    static FitAnswer of(AxisFit fit, Welders welders) {
        boolean there = fit.capability() instanceof Answer.Determined<Capability>;
        return new FitAnswer(
                fit.series().by(),
                fit.series().by() == Factor.WELDER && !welders.named()
                        ? null
                        : fit.series().of(),
                fit.series().code(),
                fit.series().chartUnit(),
                fit.choices(),
                fit.chosen(),
                fit.values(),
                fit.shape(),
                there ? indices(fit, ((Answer.Determined<Capability>) fit.capability()).value()) : null,
                there
                        ? List.of()
                        : ((Answer.NotDeterminable<Capability>) fit.capability())
                                .gaps().stream().map(Answer.Gap::words).toList(),
                fit.doubt(),
                fit.histogram() instanceof Answer.Determined<Histogram> counted
                        ? counted.value().classes()
                        : List.of());
    }

    private static Indices indices(AxisFit fit, Capability of) {
        return new Indices(
                of.mean(),
                of.deviation(),
                of.pp(),
                of.ppk(),
                of.percentiles(),
                of.words(fit.wanted().doubleValue()));
    }
}
