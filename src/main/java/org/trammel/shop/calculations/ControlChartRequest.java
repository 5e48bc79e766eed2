package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.Baseline;
import org.trammel.calc.statistics.ControlChart;
import org.trammel.calc.statistics.CumulativeSumSetting;
import org.trammel.calc.statistics.RunRule;
import org.trammel.calc.statistics.WeightedMeanSetting;
import org.trammel.calc.units.Answer;
import org.trammel.shop.web.OnlyTheseNames;

/** What is charted, and over which base. */
@OnlyTheseNames
record ControlChartRequest(
        @Schema(
                description =
                        "INDIVIDUALS, WEIGHTED_MEAN (exponentially weighted) and CUMULATIVE_SUM chart readings, the"
                                + " others groups")
        ControlChart.Kind kind,

        ChartBase base,

        @Schema(description = "in the order they were taken, all in one unit, any; 2000 at most") @Nullable
        List<BigDecimal> readings,

        @Schema(description = "in place of readings, all of one size from 2 to 25; 500 at most") @Nullable
        List<List<BigDecimal>> groups,

        @Schema(
                description =
                        "patterns that are looked for among readings or means; of ranges, steps and deviations only"
                                + " the limits are. BEYOND_LIMITS alone if left out. The first eight are the tests of Nelson"
                                + " 1984; BEYOND_LIMITS, TWO_OF_THREE_BEYOND_TWO, FOUR_OF_FIVE_BEYOND_ONE and EIGHT_ON_ONE_SIDE"
                                + " those of the Western Electric handbook. Not with WEIGHTED_MEAN and CUMULATIVE_SUM")
        @Nullable
        List<RunRule> rules,

        @Schema(description = "with WEIGHTED_MEAN only; the usual if left out") @Nullable
        WeightedMean weightedMean,

        @Schema(description = "with CUMULATIVE_SUM only; the usual if left out") @Nullable
        CumulativeSum cumulativeSum) {

    @OnlyTheseNames
    @Schema(name = "WeightedMeanSetting")
    record WeightedMean(
            @Schema(description = "of the newest reading, above 0 and at most 1; 0.2 if left out") @Nullable
            BigDecimal weight,

            @Schema(
                    description =
                            "of the limits on each side, in standard deviations of the weighted mean; 2.7 if left out")
            @Nullable
            BigDecimal width,

            @Schema(
                    description = "whether the limits of a long row hold from the first reading on; false if left out:"
                            + " they open as readings gather")
            @Nullable
            Boolean settled) {

        WeightedMeanSetting setting() {
            return new WeightedMeanSetting(
                    NotComputed.or(weight, WeightedMeanSetting.USUAL.weight()),
                    NotComputed.or(width, WeightedMeanSetting.USUAL.width()),
                    settled == null ? WeightedMeanSetting.USUAL.settled() : settled);
        }
    }

    @OnlyTheseNames
    @Schema(name = "CumulativeSumSetting")
    record CumulativeSum(
            @Schema(
                    description =
                            "what a reading may be off before it counts, in sigma, half of the shift that is to be"
                                    + " found; 0.5 if left out")
            @Nullable
            BigDecimal slack,

            @Schema(description = "beyond which a sum is an alarm, in sigma; 4.77 if left out") @Nullable
            BigDecimal decision) {

        CumulativeSumSetting setting() {
            return new CumulativeSumSetting(
                    NotComputed.or(slack, CumulativeSumSetting.USUAL.slack()),
                    NotComputed.or(decision, CumulativeSumSetting.USUAL.decision()));
        }
    }

    Answer<ControlChart> chart(Baseline taken) {
        requireWhatTheKindTakes();
        return switch (kind) {
            case INDIVIDUALS -> ControlChart.individuals(singles(), taken, rulesOrLimits());
            case WEIGHTED_MEAN ->
                ControlChart.weightedMean(
                        singles(), taken, weightedMean == null ? WeightedMeanSetting.USUAL : weightedMean.setting());
            case CUMULATIVE_SUM ->
                ControlChart.cumulativeSum(
                        singles(), taken, cumulativeSum == null ? CumulativeSumSetting.USUAL : cumulativeSum.setting());
            case MEANS_AND_RANGES -> ControlChart.meansAndRanges(together(), taken, rulesOrLimits());
            case MEANS_AND_DEVIATIONS -> ControlChart.meansAndDeviations(together(), taken, rulesOrLimits());
        };
    }

    private void requireWhatTheKindTakes() {
        requireOnlyWith(weightedMean, kind == ControlChart.Kind.WEIGHTED_MEAN, "weightedMean");
        requireOnlyWith(cumulativeSum, kind == ControlChart.Kind.CUMULATIVE_SUM, "cumulativeSum");
        boolean sums = kind == ControlChart.Kind.WEIGHTED_MEAN || kind == ControlChart.Kind.CUMULATIVE_SUM;
        requireOnlyWith(rules, !sums, "rules");
        boolean grouped = kind == ControlChart.Kind.MEANS_AND_RANGES || kind == ControlChart.Kind.MEANS_AND_DEVIATIONS;
        requireOnlyWith(readings, !grouped, "readings");
        requireOnlyWith(groups, grouped, "groups");
    }

    private void requireOnlyWith(@Nullable Object sent, boolean taken, String field) {
        if (sent != null && !taken) {
            throw NotComputed.input(field, "A chart of the kind " + kind + " takes no " + field + ".");
        }
    }

    private List<Double> singles() {
        if (readings == null) {
            throw NotComputed.input("readings", "readings is missing: there is nothing to chart.");
        }
        return SentReadings.singles(readings, "readings");
    }

    private List<List<Double>> together() {
        if (groups == null) {
            throw NotComputed.input("groups", "groups is missing: there is nothing to chart.");
        }
        return SentReadings.groups(groups, "groups");
    }

    private Set<RunRule> rulesOrLimits() {
        NotComputed.boundedBy(RunRule.values().length, "rules", rules);
        if (rules == null) {
            return RunRule.LIMITS_ALONE;
        }
        Set<RunRule> looked = EnumSet.noneOf(RunRule.class);
        looked.addAll(rules);
        return looked;
    }

    static String field(String input) {
        return switch (input) {
            case "weight", "width" -> "weightedMean." + input;
            case "slack", "decision" -> "cumulativeSum." + input;
            case "baseline" -> "base";
            default -> input;
        };
    }
}
