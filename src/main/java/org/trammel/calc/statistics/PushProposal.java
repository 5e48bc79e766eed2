package org.trammel.calc.statistics;

import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.units.Answer;

/**
 * How far to push for a wanted lasting movement, from what pushes did before on tubes of the same kind in the same state.
 *
 * <pre>
 * push = a + b · set        by least squares over the history, with the interval of the next push
 * first push = 0.85 · push  expected of it: set = (0.85 · push − a)/b, none if below 0
 * </pre>
 *
 * push and set in mm at the same place, both counted from where the tube rests before that push. Approached from below:
 * the first push stays short, is measured, joins the history, and what is left is asked for anew, because what went too
 * far cannot be taken back.
 *
 * <p>Validity: one tube set, one state of heat treatment, pushes one by one; movements within those of the history (the
 * line is not drawn out) and within the largest that the shop allows. Whether the window is open and attempts are left
 * is not judged here.
 *
 * <p>Source: least squares and prediction interval, N. R. Draper, H. Smith, Applied Regression Analysis (3rd ed. 1998),
 * chapter 1; approach from below at 85 %: common practice.
 *
 * @param set_mm wanted, without sign
 * @param push_mm expected to bring it
 * @param next_mm between which the push that brings it lies
 * @param firstPush_mm to push first
 * @param firstSet_mm what the first push is expected to leave
 * @param line through the history
 */
public record PushProposal(
        double set_mm, double push_mm, Interval next_mm, double firstPush_mm, double firstSet_mm, Regression line) {

    /** Of the push that is expected to do it; common practice. */
    public static final double FIRST_SHARE = 0.85;

    /**
     * A push that was done.
     *
     * @param push_mm how far it was pushed from rest, without sign
     * @param set_mm how far it stayed, without sign
     */
    public record Push(double push_mm, double set_mm) {}

    /**
     * Proposes a push.
     *
     * @param history pushes on the same kind of tube in the same state
     * @param set_mm wanted movement, without sign
     * @param largestSet_mm the shop's limit of a lasting movement
     */
    public static Answer<PushProposal> of(List<Push> history, double set_mm, double largestSet_mm) {
        Asked asked = new Asked();
        asked.above0("set", "wanted movement in mm", set_mm);
        asked.above0("largestSet", "largest movement allowed in mm", largestSet_mm);
        List<Double> pushes = new ArrayList<>();
        List<Double> sets = new ArrayList<>();
        for (int i = 0; i < history.size() && asked.met(); i++) {
            Push push = history.get(i);
            asked.above0("history", "push number " + (i + 1) + " in mm", push.push_mm());
            asked.notBelow0("history", "movement after push number " + (i + 1) + " in mm", push.set_mm());
            pushes.add(push.push_mm());
            sets.add(push.set_mm());
        }
        if (asked.met()) {
            asked.holds(
                    set_mm <= largestSet_mm,
                    "set",
                    "A movement of " + Written.plain(set_mm) + " mm is more than the " + Written.plain(largestSet_mm)
                            + " mm that the shop allows.");
        }
        if (!asked.met()) {
            return asked.refusal();
        }
        return Regression.of(List.of(new Column("movement", sets)), new Column("push", pushes))
                .then(line -> proposed(line, set_mm));
    }

    private static Answer<PushProposal> proposed(Regression line, double set_mm) {
        double slope = line.terms().get(0).coefficient().estimate();
        if (line.terms().get(0).coefficient().interval().low() <= 0) {
            return Answer.none(
                    "history",
                    "The history does not show that a longer push moves more: the line rises by " + Written.plain(slope)
                            + " mm for each mm, and none at all is possible as well. No push can be proposed.");
        }
        return line.predict(List.of(set_mm)).then(prediction -> {
            double first = FIRST_SHARE * prediction.value();
            double firstSet = Math.max(0, (first - line.constant().estimate()) / slope);
            return prediction.next().low() > 0
                    ? Answer.of(new PushProposal(set_mm, prediction.value(), prediction.next(), first, firstSet, line))
                    : Answer.none(
                            "history",
                            "The pushes of the history scatter too far: for " + Written.plain(set_mm)
                                    + " mm the next may be anything down to nothing. No push can be proposed.");
        });
    }
}
