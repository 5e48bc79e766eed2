package org.trammel.calc.thermal;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/**
 * How much a powder or paint has cured, by the temperature of the metal.
 *
 * <pre>
 * cure = ∫ dt / t₀(T),   ln t₀ = a + E / (R T) through the pairs of the sheet; least squares for more than two
 * </pre>
 *
 * Cure without unit, 1 is cured in full; t₀ minutes needed at T; T in kelvins. One pair alone gives no E, which is then to be
 * told with its source. Two-sided: too little leaves it soft, too much changes colour and adds heat to the frame. The coldest
 * metal decides on too little, the hottest on too much.
 *
 * @param pairs of the sheet
 * @param energy_kJPerMol E
 * @param minutesAtFirst t₀ at the first pair's temperature by the line through all
 * @param least_share from where it counts as cured; 1 is what the sheet says
 * @param most_share beyond which it counts as over-cured
 */
public record CureWindow(
        List<CurePair> pairs, double energy_kJPerMol, double minutesAtFirst, double least_share, double most_share) {

    /** Least and most that are common practice. */
    public static final double USUAL_LEAST = 1;

    public static final double USUAL_MOST = 1.5;

    /** E of a powder with 10 min at 200 °C and 20 min at 180 °C; to be used where a sheet prints one pair, and told so. */
    public static final double TYPICAL_POWDER_KJ_PER_MOL = 61.8;

    private static final double LONGEST_MIN = 10_000;

    public CureWindow {
        pairs = List.copyOf(pairs);
    }

    /**
     * Draws the line through the pairs.
     *
     * @param energy_kJPerMol for a single pair; null where the pairs give it
     */
    public static Answer<CureWindow> of(
            List<CurePair> pairs, @Nullable Double energy_kJPerMol, double least_share, double most_share) {
        Wanted wanted = new Wanted()
                .holds(!pairs.isEmpty(), "pairs", "The sheet of the powder gives no minutes at a metal temperature.")
                .above0("least", "least cure", least_share, "")
                .holds(
                        most_share > least_share,
                        "most",
                        "The most cure, " + Said.percent(most_share) + ", is not above the least, "
                                + Said.percent(least_share) + ".");
        for (int i = 0; i < pairs.size(); i++) {
            wanted.temperature(
                            "pairs[" + i + "].temperature",
                            "metal temperature",
                            pairs.get(i).degC())
                    .above0(
                            "pairs[" + i + "].minutes",
                            "cure time",
                            pairs.get(i).minutes(),
                            " min")
                    .holds(
                            !(pairs.get(i).minutes() > LONGEST_MIN),
                            "pairs[" + i + "].minutes",
                            "The cure time is longer than " + Said.figure(LONGEST_MIN, 0) + " min.");
        }
        if (energy_kJPerMol != null) {
            wanted.above0("activation", "activation energy", energy_kJPerMol, " kJ/mol");
        }
        if (!wanted.met()) {
            return wanted.refusal();
        }
        return energy_kJPerMol != null && pairs.size() == 1
                ? Answer.of(new CureWindow(pairs, energy_kJPerMol, pairs.get(0).minutes(), least_share, most_share))
                : fitted(pairs, energy_kJPerMol, least_share, most_share);
    }

    private static Answer<CureWindow> fitted(
            List<CurePair> pairs, @Nullable Double energy_kJPerMol, double least_share, double most_share) {
        if (energy_kJPerMol != null) {
            return Answer.none("activation", "Several pairs give the activation energy themselves.");
        }
        double meanInverse =
                pairs.stream().mapToDouble(CureWindow::inverse).average().orElseThrow();
        double meanLog = pairs.stream()
                .mapToDouble(pair -> Math.log(pair.minutes()))
                .average()
                .orElseThrow();
        double squares = 0;
        double products = 0;
        for (CurePair pair : pairs) {
            double off = inverse(pair) - meanInverse;
            squares += off * off;
            products += off * (Math.log(pair.minutes()) - meanLog);
        }
        if (!(squares > 1e-14)) {
            return Answer.none(
                    "activation",
                    "One metal temperature does not say how cure hastens with it: a second pair or an activation energy is"
                            + " needed.");
        }
        double slope = products / squares;
        if (!(slope > 0)) {
            return Answer.none(
                    "pairs", "By its pairs the powder would cure no faster when hotter: look at the sheet again.");
        }
        double atFirst = Math.exp(meanLog + slope * (inverse(pairs.get(0)) - meanInverse));
        return Answer.of(
                new CureWindow(pairs, slope * Activation.R_J_PER_MOL_K / 1000, atFirst, least_share, most_share));
    }

    private static double inverse(CurePair pair) {
        return 1 / (pair.degC() + Activation.ZERO_DEG_C_K);
    }

    /** Minutes that cure in full at a metal temperature. */
    public double minutesAt(double degC) {
        return minutesAtFirst / Activation.factor(degC, pairs.get(0).degC(), energy_kJPerMol);
    }

    /**
     * What a run cured.
     *
     * @param least_share of full cure, by the coldest metal
     * @param most_share by the hottest
     * @param atTemperature_min minutes in which the coldest metal was at the least temperature of the pairs or above
     * @param hottest_degC of the metal
     * @param beyondSheet whether the metal came more than 5 K above the hottest pair, where the line is not backed
     * @param findings on too little and on too much
     */
    public record Cure(
            double least_share,
            double most_share,
            double atTemperature_min,
            double hottest_degC,
            boolean beyondSheet,
            List<Finding> findings) {

        public Cure {
            findings = List.copyOf(findings);
        }

        public Judged judged() {
            return findings.stream().map(Finding::judged).reduce(Judged.CONFORMING, Judged::worse);
        }
    }

    /** Cure of a recorded run. */
    public Answer<Cure> of(LoadTrace metal) {
        double reference = pairs.get(0).degC();
        Activation activation = new Activation(energy_kJPerMol, energy_kJPerMol, energy_kJPerMol, "pairs");
        return EquivalentTime.of(metal, reference, activation).then(time -> {
            double least = time.coldest().usual_h() * 60 / minutesAtFirst;
            double recorded = (time.coldest().usual_h() - time.inGaps().usual_h()) * 60 / minutesAtFirst;
            double most = time.hottest().usual_h() * 60 / minutesAtFirst;
            double coolest = pairs.stream().mapToDouble(CurePair::degC).min().orElseThrow();
            double hottestPair =
                    pairs.stream().mapToDouble(CurePair::degC).max().orElseThrow();
            double atTemperature =
                    TimeInBand.of(metal, coolest, Wanted.GREATEST_DEG_C).total_h() * 60;
            double hottest = Double.NEGATIVE_INFINITY;
            for (int row = 0; row < metal.rows(); row++) {
                hottest = Math.max(hottest, metal.hottest_degC(row, 0));
            }
            return Answer.of(new Cure(
                    least,
                    most,
                    atTemperature,
                    hottest,
                    hottest > hottestPair + 5,
                    findings(least, recorded, most, metal.hidden_h())));
        });
    }

    /** Cure of so many minutes at one metal temperature, as a plan. */
    public Answer<Cure> of(double degC, double minutes) {
        Wanted wanted = new Wanted()
                .temperature("temperature", "metal temperature", degC)
                .above0("minutes", "time at it", minutes, " min");
        if (!wanted.met()) {
            return wanted.refusal();
        }
        double share = minutes / minutesAt(degC);
        double coolest = pairs.stream().mapToDouble(CurePair::degC).min().orElseThrow();
        double hottestPair = pairs.stream().mapToDouble(CurePair::degC).max().orElseThrow();
        return Answer.of(new Cure(
                share,
                share,
                degC >= coolest ? minutes : 0,
                degC,
                degC > hottestPair + 5,
                findings(share, share, share, 0)));
    }

    private List<Finding> findings(double least, double recorded, double most, double hidden_h) {
        List<Finding> findings = new ArrayList<>();
        Judged cured = least < least_share - 1e-9
                ? Judged.NOT_CONFORMING
                : recorded < least_share - 1e-9 ? Judged.UNDECIDED : Judged.CONFORMING;
        findings.add(new Finding(
                cured,
                "By the coldest metal it is cured to " + Said.percent(least) + "; at least " + Said.percent(least_share)
                        + " are asked for."));
        findings.add(Finding.upTo(
                most <= most_share + 1e-9,
                hidden_h,
                "By the hottest metal it is cured to " + Said.percent(most) + "; at most " + Said.percent(most_share)
                        + " are allowed."));
        return findings;
    }
}
