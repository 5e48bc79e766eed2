package org.trammel.shop.drift;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** A watched axis and where it stands. */
record SeriesAnswer(
        long id,
        Factor by,

        @Schema(
                description =
                        "a jig's code, a welder's initials, lots of a tube set; null for a welder to all but the QA lead")
        @Nullable
        String of,

        String code,
        String name,

        @Schema(description = "of the readings") String unit,

        @Schema(description = "whether the chart shows shares of the half tolerance; else deviations in the unit")
        boolean scaled,

        Standing.Stand stand,
        int readings,

        @Schema(description = "number of the reading the drift that goes on began at, from 1; null if none does")
        @Nullable
        Integer driftsSince) {

    static SeriesAnswer of(Standing standing, Welders welders) {
        Series series = standing.series();
        return new SeriesAnswer(
                series.id(),
                series.by(),
                series.by() == Factor.WELDER && !welders.named() ? null : series.of(),
                series.code(),
                series.name(),
                series.unit(),
                series.scaled(),
                standing.stand(),
                standing.kept().charted(),
                standing.kept().driftsSince());
    }
}
