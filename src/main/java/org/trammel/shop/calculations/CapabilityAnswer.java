package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.Capability;
import org.trammel.calc.statistics.Normality;
import org.trammel.calc.statistics.Shape;

/** How a process fits between its limits. */
record CapabilityAnswer(
        @Schema(description = "of readings") int count,

        @Schema(description = "in the unit of the readings") double mean,

        @Schema(description = "n − 1, over all readings; in their unit")
        double standardDeviation,

        Shape shape,
        OuterPercentiles percentiles,

        @Schema(description = "Pp; null where one side only is limited") @Nullable
        CapabilityIndex pp,

        @Schema(description = "Ppk") CapabilityIndex ppk,

        NormalityTest normality,

        @Schema(description = "whether the index that is asked for is proven, at 95 %")
        String words) {

    @Schema(description = "of the shape, in the unit of the readings")
    record OuterPercentiles(
            @Schema(description = "0.135 of a hundred lie below")
            double low,

            double median,

            @Schema(description = "0.135 of a hundred lie above")
            double high) {}

    record CapabilityIndex(
            @Schema(description = "a ratio") double value,

            @Schema(description = "of the interval that holds the true index, at 95 %")
            double low,

            @Schema(description = "of the same") double high) {

        static CapabilityIndex of(Capability.Index index) {
            return new CapabilityIndex(
                    index.value(), index.interval().low(), index.interval().high());
        }
    }

    @Schema(description = "the test of Anderson and Darling, mean and deviation taken from the readings")
    record NormalityTest(
            @Schema(description = "A* with the correction for the count")
            double statistic,

            @Schema(description = "of one as large if the readings are normal, 0 to 1; a large one proves nothing")
            double probability,

            @Schema(description = "at 5 %") String words) {}

    static CapabilityAnswer of(Capability capability, Normality normality, double wanted) {
        Shape.Percentiles percentiles = capability.percentiles();
        return new CapabilityAnswer(
                capability.count(),
                capability.mean(),
                capability.deviation(),
                capability.shape(),
                new OuterPercentiles(percentiles.low(), percentiles.median(), percentiles.high()),
                capability.pp() == null ? null : CapabilityIndex.of(capability.pp()),
                CapabilityIndex.of(capability.ppk()),
                new NormalityTest(normality.statistic(), normality.probability(), normality.words()),
                capability.words(wanted));
    }
}
