package org.trammel.calc.statistics;

import org.trammel.calc.units.Answer;

/**
 * A deviation as a share of the half tolerance, so that frames of different nominals and tolerances share a chart.
 *
 * <pre>share = (y − N) / ((U − L)/2)</pre>
 *
 * y reading, N nominal, L and U limits, all in one unit; the share has none. 0 is the nominal; where the nominal lies
 * amid the limits, −1 and +1 are the limits. Validity: both limits given, L below U, N between them.
 *
 * <p>Source: control charts for short runs of different parts, where deviation from nominal is divided by what spread is
 * expected of the part; D. C. Montgomery, Introduction to Statistical Quality Control, "Control charts for short
 * production runs" (chapter from memory). Dividing by the tolerance is common practice where the spread follows it.
 *
 * @param share of the half tolerance
 */
public record ScaledDeviation(double share) {

    /** Scales a reading. */
    public static Answer<ScaledDeviation> of(double reading, double nominal, double lower, double upper) {
        Asked asked = new Asked();
        asked.number("reading", "reading", reading);
        asked.number("nominal", "nominal", nominal);
        asked.number("lower", "lower limit", lower);
        asked.number("upper", "upper limit", upper);
        if (!asked.met()) {
            return asked.refusal();
        }
        String limits = Written.plain(lower) + " and " + Written.plain(upper);
        asked.holds(lower < upper, "upper", "The limits " + limits + " leave nothing between them to scale by.");
        asked.holds(
                nominal >= lower && nominal <= upper,
                "nominal",
                "The nominal, " + Written.plain(nominal) + ", is not between the limits " + limits + ".");
        return asked.met()
                ? Answer.of(new ScaledDeviation((reading - nominal) / ((upper - lower) / 2)))
                : asked.refusal();
    }
}
