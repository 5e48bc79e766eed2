package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.Attribution;
import org.trammel.calc.units.Answer;

/** What readings hang on. */
record EffectsAnswer(
        @Schema(description = "of readings") int count,

        @Schema(description = "of all readings, in their unit")
        double mean,

        @Schema(description = "what the factors leave, as a standard deviation in the unit of the readings")
        double residualStandardDeviation,

        int degreesOfFreedom,

        @Schema(description = "one for each factor, in the order they were sent")
        List<FactorEffect> effects,

        @Schema(description = "what was found, in words") List<String> sentences) {

    record FactorEffect(
            String factor,

            @Schema(
                    description =
                            "F, what the factor takes up against what is left; null where nothing can be compared")
            @Nullable
            Double f,

            @Schema(description = "of an F as large if the factor added nothing, 0 to 1; null as f is") @Nullable
            Double probability,

            @Schema(description = "of every two levels that the readings can tell apart, the largest first")
            List<LevelDifference> differences,

            @Schema(description = "why others cannot be, and one frame that would begin to separate them")
            List<String> open) {}

    record LevelDifference(
            String higher,
            String lower,

            @Schema(
                    description =
                            "how far higher lies above lower, freed from the other factors; in the unit of the readings")
            double difference,

            @Schema(description = "of the difference, in its unit")
            double standardError,

            double t,

            @Schema(description = "t from which on it is proven: at 5 %, shared by all pairs of the factor")
            double neededT,

            boolean proven) {

        static LevelDifference of(Attribution.Difference difference) {
            return new LevelDifference(
                    difference.higher(),
                    difference.lower(),
                    difference.difference(),
                    difference.standardError(),
                    difference.t(),
                    difference.needed(),
                    difference.proven());
        }
    }

    static EffectsAnswer of(Attribution found, List<String> factors) {
        List<FactorEffect> effects = new ArrayList<>();
        for (Answer<Attribution.Effect> effect : found.effects()) {
            effects.add(effect(effect, factors.get(effects.size())));
        }
        return new EffectsAnswer(
                found.count(),
                found.mean(),
                found.residualDeviation(),
                found.degreesOfFreedom(),
                effects,
                found.sentences());
    }

    private static FactorEffect effect(Answer<Attribution.Effect> answer, String factor) {
        if (answer instanceof Answer.Determined<Attribution.Effect> there) {
            Attribution.Effect effect = there.value();
            return new FactorEffect(
                    factor,
                    effect.f(),
                    effect.probability(),
                    effect.differences().stream().map(LevelDifference::of).toList(),
                    effect.open());
        }
        List<Answer.Gap> gaps = ((Answer.NotDeterminable<Attribution.Effect>) answer).gaps();
        return new FactorEffect(
                factor,
                null,
                null,
                List.of(),
                gaps.stream().map(Answer.Gap::words).toList());
    }
}
