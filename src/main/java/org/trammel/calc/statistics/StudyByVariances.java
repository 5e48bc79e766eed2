package org.trammel.calc.statistics;

import org.hipparchus.distribution.continuous.FDistribution;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.statistics.GaugeStudy.Line;
import org.trammel.calc.statistics.GaugeStudy.Variances;
import org.trammel.calc.units.Answer;

/**
 * A gauge study by analysis of variance, both factors random.
 *
 * <pre>
 * SS parts = a r Σ (x̄ₚ − x̄)²   SS appraisers = p r Σ (x̄ₐ − x̄)²   SS interaction = r Σ (x̄ₚₐ − x̄ₚ − x̄ₐ + x̄)²
 * SS repeats = Σ (x − x̄ₚₐ)²     MS = SS/degrees of freedom:  p − 1, a − 1, (p − 1)(a − 1), p a (r − 1)
 * σ² repeat = MS repeats   σ² interaction = (MS interaction − MS repeats)/r
 * σ² appraisers = (MS appraisers − MS interaction)/(p r)   σ² parts = (MS parts − MS interaction)/(a r)
 * </pre>
 *
 * p parts, a appraisers, r trials. An interaction with a probability above 0.25 is pooled: its squares and degrees of freedom join
 * the repeats, and that mean square takes both places. Variances below 0 count as 0.
 *
 * <p>Source: AIAG, Measurement Systems Analysis, 4th edition (2010), chapter III B and appendix A; D. C. Montgomery,
 * Design and Analysis of Experiments, two-factor random model; 0.25 is common practice.
 */
final class StudyByVariances {

    private static final double POOLED_ABOVE = 0.25;

    private StudyByVariances() {}

    static Answer<GaugeStudy> of(Crossed crossed, @Nullable Double tolerance) {
        int p = crossed.parts().size();
        int a = crossed.appraisers().size();
        int r = crossed.trials();
        double mean = crossed.mean();
        double ofParts = 0;
        double ofAppraisers = 0;
        double ofInteraction = 0;
        double ofRepeats = 0;
        for (int j = 0; j < a; j++) {
            ofAppraisers += square(crossed.appraiserMean(j) - mean);
        }
        for (int i = 0; i < p; i++) {
            ofParts += square(crossed.partMean(i) - mean);
            for (int j = 0; j < a; j++) {
                Summary cell = Summary.ofNumbers(crossed.values()[i][j]);
                ofInteraction += square(cell.mean() - crossed.partMean(i) - crossed.appraiserMean(j) + mean);
                ofRepeats += square(cell.deviation()) * (r - 1);
            }
        }
        int dofInteraction = (p - 1) * (a - 1);
        int dofRepeats = p * a * (r - 1);
        double msRepeats = ofRepeats / dofRepeats;
        double msInteraction = r * ofInteraction / dofInteraction;
        Line interaction = line(r * ofInteraction, dofInteraction, msRepeats, dofRepeats);
        Line repeats = new Line(ofRepeats, dofRepeats, msRepeats, null, null);
        Double probability = interaction.probability();
        boolean pooled = probability != null && probability > POOLED_ABOVE;
        Line parts = line(a * r * ofParts, p - 1, msInteraction, dofInteraction);
        Line appraisers = line(p * r * ofAppraisers, a - 1, msInteraction, dofInteraction);
        double within = pooled ? (r * ofInteraction + ofRepeats) / (dofInteraction + dofRepeats) : msRepeats;
        double against = pooled ? within : msInteraction;
        double interacting = pooled ? 0 : Math.max(0, (msInteraction - msRepeats) / r);
        double appraising = Math.max(0, (appraisers.meanSquare() - against) / p / r);
        double parting = Math.max(0, (parts.meanSquare() - against) / a / r);
        return crossed.spread(Math.sqrt(msRepeats))
                .then(there -> there.study(
                        Math.sqrt(within),
                        Math.sqrt(appraising + interacting),
                        Math.sqrt(parting),
                        tolerance,
                        new Variances(parts, appraisers, interaction, repeats, pooled),
                        null));
    }

    private static Line line(double squares, int dof, double against, int dofAgainst) {
        double meanSquare = squares / dof;
        if (!(against > 0)) {
            return new Line(squares, dof, meanSquare, null, null);
        }
        double f = meanSquare / against;
        return new Line(squares, dof, meanSquare, f, 1 - new FDistribution(dof, dofAgainst).cumulativeProbability(f));
    }

    private static double square(double x) {
        return x * x;
    }
}
