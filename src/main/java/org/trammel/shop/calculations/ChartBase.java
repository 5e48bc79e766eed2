package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.BaseDoubts;
import org.trammel.calc.statistics.Baseline;
import org.trammel.calc.statistics.ControlChart;
import org.trammel.calc.units.Answer;
import org.trammel.shop.web.OnlyTheseNames;

/** What the limits of a chart are made of. */
@OnlyTheseNames
@Schema(
        description =
                "readings, or groups, or centre with sigma; all in the unit of what is charted. Limits stay those of"
                        + " one base until somebody takes another: send its centre and sigma again, not later readings.")
record ChartBase(
        @Schema(description = "of a period that stood still, in the order they were taken; 2000 at most") @Nullable
        List<BigDecimal> readings,

        @Schema(description = "of such a period, all of one size from 2 to 25; 500 at most") @Nullable
        List<List<BigDecimal>> groups,

        @Nullable BigDecimal centre,

        @Schema(
                description = "standard deviation of a single reading, above 0: with centre; or with readings, where it"
                        + " is known from elsewhere. Left out with readings it comes from the steps between neighbours,"
                        + " with groups from the spread inside them")
        @Nullable
        BigDecimal sigma) {

    Baseline baseline(ControlChart.Kind kind) {
        if (Stream.of(readings, groups, centre).filter(Objects::nonNull).count() != 1) {
            throw NotComputed.input(
                    "base", "The base is told by readings, or by groups, or by centre with sigma, and by one of them.");
        }
        return NotComputed.unless(taken(kind), input -> "base." + (groups == null ? input : "groups"));
    }

    private Answer<Baseline> taken(ControlChart.Kind kind) {
        if (readings != null) {
            List<Double> of = SentReadings.singles(readings, "base.readings");
            return sigma == null ? Baseline.ofReadings(of) : Baseline.ofReadings(of, sigma.doubleValue());
        }
        if (groups == null) {
            return Baseline.given(
                    NotComputed.needed(centre, "base.centre", "a base has a centre."),
                    NotComputed.needed(sigma, "base.sigma", "a centre alone gives no limits."));
        }
        if (sigma != null) {
            throw NotComputed.input("base.sigma", "The standard deviation of groups comes from the groups themselves.");
        }
        List<List<Double>> of = SentReadings.groups(groups, "base.groups");
        return kind == ControlChart.Kind.MEANS_AND_DEVIATIONS ? Baseline.byDeviations(of) : Baseline.byRanges(of);
    }

    /** What speaks against the base, where its spread is that of its own readings. */
    List<String> doubts() {
        return readings == null || sigma != null
                ? List.of()
                : NotComputed.unless(
                                BaseDoubts.of(SentReadings.singles(readings, "base.readings")),
                                input -> "base." + input)
                        .sentences();
    }
}
