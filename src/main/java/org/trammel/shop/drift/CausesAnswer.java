package org.trammel.shop.drift;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.Attribution;
import org.trammel.calc.statistics.Attribution.Difference;
import org.trammel.calc.statistics.Attribution.Effect;
import org.trammel.calc.units.Answer;

/** What a shift hangs on; figures in the unit. */
record CausesAnswer(
        String code,
        String name,
        String unit,
        String words,

        @Schema(description = "compared") int readings,

        @Schema(description = "that do not name all that is compared, or cannot be put on this scale")
        int left,

        @Schema(description = "why nothing can be said") List<String> why,

        @Schema(description = "null where nothing can be said") @Nullable
        Double residualStandardDeviation,

        List<ByFactor> factors) {

    record ByFactor(Factor factor, List<String> sentences, List<Compared> differences) {}

    @Schema(description = "freed from the other factors; the largest first")
    record Compared(
            String higher,
            String lower,
            double difference,
            double standardError,
            double t,
            double neededT,
            boolean proven) {

        static Compared of(Difference each) {
            return new Compared(
                    each.higher(),
                    each.lower(),
                    each.difference(),
                    each.standardError(),
                    each.t(),
                    each.needed(),
                    each.proven());
        }
    }

    static CausesAnswer of(ShiftTrace trace) {
        Attribution found = trace.found() instanceof Answer.Determined<Attribution> there ? there.value() : null;
        return new CausesAnswer(
                trace.axis().code(),
                trace.axis().name(),
                trace.unit(),
                trace.words(),
                trace.used().size(),
                trace.left(),
                trace.found() instanceof Answer.NotDeterminable<Attribution> none
                        ? none.gaps().stream().map(Answer.Gap::words).toList()
                        : List.of(),
                found == null ? null : found.residualDeviation(),
                found == null
                        ? List.of()
                        : IntStream.range(0, trace.factors().size())
                                .mapToObj(i -> new ByFactor(
                                        trace.factors().get(i), found.sentencesOf(i), differences(found, i)))
                                .toList());
    }

    private static List<Compared> differences(Attribution found, int factor) {
        return found.effects().get(factor) instanceof Answer.Determined<Effect> effect
                ? effect.value().differences().stream().map(Compared::of).toList()
                : List.of();
    }
}
