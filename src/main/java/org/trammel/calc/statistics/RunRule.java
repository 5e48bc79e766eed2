package org.trammel.calc.statistics;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * A pattern that a process standing still shows seldom.
 *
 * <p>σ is that of what is plotted. "Beyond" and "within" are strict; a point on the centre line is on neither side and
 * ends a run, two equal points in a row end a rise, a fall and an alternation. A pattern is told at its last point, and at every further
 * point that completes it anew; of the patterns "k of m" the last point is one of the k.
 *
 * <p>Sources: L. S. Nelson, The Shewhart control chart: tests for special causes, Journal of Quality Technology 16
 * (1984) 237, tests 1 to 8; Western Electric Company, Statistical Quality Control Handbook, 1956. Both cited from memory
 * of their definitions, which handbooks of statistical software repeat alike.
 */
public enum RunRule {
    BEYOND_LIMITS("One point beyond a control limit.", "beyond a limit"),
    NINE_ON_ONE_SIDE("Nine points in a row on one side of the centre line.", "nine in a row on one side"),
    SIX_RISING_OR_FALLING("Six points in a row that rise, or six that fall, without a stop.", "six in a row one way"),
    FOURTEEN_ALTERNATING(
            "Fourteen points in a row that go up and down in turn.", "fourteen in a row up and down in turn"),
    TWO_OF_THREE_BEYOND_TWO(
            "Two of three points in a row beyond two standard deviations on the same side.",
            "two of three beyond two standard deviations"),
    FOUR_OF_FIVE_BEYOND_ONE(
            "Four of five points in a row beyond one standard deviation on the same side.",
            "four of five beyond one standard deviation"),
    FIFTEEN_WITHIN_ONE(
            "Fifteen points in a row within one standard deviation of the centre line, on either side.",
            "fifteen in a row within one standard deviation"),
    EIGHT_OUTSIDE_ONE(
            "Eight points in a row beyond one standard deviation, on both sides of the centre line.",
            "eight in a row beyond one standard deviation on both sides"),
    EIGHT_ON_ONE_SIDE("Eight points in a row on one side of the centre line.", "eight in a row on one side");

    /** One point beyond a limit and nothing else: the fewest false alarms, one in 370 for normal readings. */
    public static final Set<RunRule> LIMITS_ALONE = Collections.unmodifiableSet(EnumSet.of(BEYOND_LIMITS));

    /** The eight tests of Nelson. */
    public static final Set<RunRule> NELSON =
            Collections.unmodifiableSet(EnumSet.range(BEYOND_LIMITS, EIGHT_OUTSIDE_ONE));

    /** The four rules of the Western Electric handbook: one false alarm in about 92 points. */
    public static final Set<RunRule> WESTERN_ELECTRIC = Collections.unmodifiableSet(
            EnumSet.of(BEYOND_LIMITS, TWO_OF_THREE_BEYOND_TWO, FOUR_OF_FIVE_BEYOND_ONE, EIGHT_ON_ONE_SIDE));

    private final String definition;
    private final String found;

    RunRule(String definition, String found) {
        this.definition = definition;
        this.found = found;
    }

    /** The rule as a sentence. */
    public String definition() {
        return definition;
    }

    /** What is said of a point that completes it, as a sentence goes on. */
    String found() {
        return found;
    }
}
