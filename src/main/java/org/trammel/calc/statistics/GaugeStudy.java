package org.trammel.calc.statistics;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/**
 * How much of the spread of readings is the gauge's and its users': every appraiser measured every part the same number
 * of times, without seeing what was read before.
 *
 * <pre>
 * total² = gauge² + parts²     gauge² = repeatability² + reproducibility²
 * share of spread  σ/σ total   share of tolerance  6 σ/(U − L)   categories  1.41 · σ parts/σ gauge
 * </pre>
 *
 * By variance analysis the interaction of appraiser and part is seen and counted with reproducibility; by ranges it is
 * not. Categories are how many sizes of parts the gauge tells apart; they are rounded down, and are one at least.
 *
 * <p>Source: Automotive Industry Action Group, Measurement Systems Analysis, 4th edition (2010), chapter III B, crossed
 * study by average and range and by analysis of variance.
 *
 * @param parts how many parts
 * @param appraisers how many appraisers
 * @param trials how often each measured each
 * @param mean of all readings
 * @param components in the order of {@link Source}
 * @param categories 1 or more
 * @param rawCategories before rounding down
 * @param variances the analysis, or null if by ranges
 * @param ranges the ranges, or null if by variance analysis
 */
public record GaugeStudy(
        int parts,
        int appraisers,
        int trials,
        double mean,
        List<Component> components,
        int categories,
        double rawCategories,
        @Nullable Variances variances,
        @Nullable Ranges ranges) {

    /** Fewer categories than these cannot steer a process; rule of thumb of the source, from memory. */
    public static final int USUAL_CATEGORIES = 5;

    /** √2, as the source prints and reckons with it. */
    static final double CATEGORIES_FACTOR = 1.41;

    public GaugeStudy {
        components = List.copyOf(components);
    }

    /** Where spread comes from. */
    public enum Source {
        /** One appraiser on one part, again. */
        REPEATABILITY,
        /** Appraisers among each other, with their interaction with parts. */
        REPRODUCIBILITY,
        /** Both: repeatability and reproducibility. */
        GAUGE,
        PARTS,
        TOTAL
    }

    /** What a share of the spread below a tenth, up to three tenths, or above is held to be; rule of thumb of the source, from memory. */
    public enum Fitness {
        GOOD,
        DEPENDS,
        NOT_FIT
    }

    /**
     * A reading.
     *
     * @param part which part
     * @param appraiser who measured it
     */
    public record Reading(String part, String appraiser, double value) {}

    /**
     * One source of spread.
     *
     * @param deviation σ, not below 0
     * @param ofVariance share of the total variance, 0 to 1
     * @param ofSpread share of the total deviation, 0 to 1; these do not add up to 1
     * @param ofTolerance share of the tolerance that 6 σ takes, or null if none was given
     */
    public record Component(
            Source source,
            double deviation,
            double ofVariance,
            double ofSpread,
            @Nullable Double ofTolerance) {}

    /**
     * A line of the analysis.
     *
     * @param f ratio to the line it is held against, or null for the last
     * @param probability of a ratio as large by chance, or null
     */
    public record Line(
            double sumOfSquares,
            int degreesOfFreedom,
            double meanSquare,
            @Nullable Double f,
            @Nullable Double probability) {}

    /**
     * The analysis of variance.
     *
     * @param pooled whether the interaction, which did not show, was counted with repeatability
     */
    public record Variances(Line parts, Line appraisers, Line interaction, Line repeatability, boolean pooled) {}

    /**
     * The ranges of repeats.
     *
     * @param mean R̄
     * @param limit above which a range is an alarm, D₄ R̄
     * @param beyond a sentence for each that is
     */
    public record Ranges(double mean, double limit, List<String> beyond) {

        public Ranges {
            beyond = List.copyOf(beyond);
        }
    }

    /**
     * By analysis of variance.
     *
     * @param tolerance width U − L of what the gauge is to judge, or null
     */
    public static Answer<GaugeStudy> byVariances(List<Reading> readings, @Nullable Double tolerance) {
        return Crossed.of(readings, tolerance).then(crossed -> StudyByVariances.of(crossed, tolerance));
    }

    /**
     * By average and range.
     *
     * @param tolerance width U − L of what the gauge is to judge, or null
     */
    public static Answer<GaugeStudy> byRanges(List<Reading> readings, @Nullable Double tolerance) {
        return Crossed.of(readings, tolerance).then(crossed -> StudyByRanges.of(crossed, tolerance));
    }

    /** Share that a source has. */
    public Component of(Source source) {
        return components.get(source.ordinal());
    }

    /** What the gauge's share of the spread is held to be. */
    public Fitness fitness() {
        double share = of(Source.GAUGE).ofSpread();
        return share < 0.1 ? Fitness.GOOD : share <= 0.3 ? Fitness.DEPENDS : Fitness.NOT_FIT;
    }

    /** The study in a sentence or two. */
    public String words() {
        String fit = switch (fitness()) {
            case GOOD -> "good";
            case DEPENDS -> "fit or not by what it is to judge";
            case NOT_FIT -> "not fit to follow these parts";
        };
        return "The gauge takes " + Written.decimals(100 * of(Source.GAUGE).ofSpread(), 1)
                + " % of the spread and tells " + categories + (categories == 1 ? " category" : " categories")
                + " of parts apart: by the rule of thumb of 10 and 30 % " + fit + "."
                + (categories < USUAL_CATEGORIES
                        ? " Fewer than " + USUAL_CATEGORIES + " categories cannot steer a process."
                        : "");
    }
}
