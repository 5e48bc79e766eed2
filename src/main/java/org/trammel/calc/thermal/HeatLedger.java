package org.trammel.calc.thermal;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/**
 * The heat that an aged frame has seen since, as a share of its age.
 *
 * <pre>share = Σ equivalent hours of all visits to an oven after the age / hours of the age</pre>
 *
 * All counted at the reference temperature of the age by the usual activation energy; with the ones held possible beside it. A
 * share of exactly the limit is allowed.
 *
 * @param age_h hours of the age at its reference temperature
 * @param limit_share share that the frame may see in its life after it
 * @param used what it has seen
 * @param next what the next visit would add, null if none is asked about
 */
public record HeatLedger(
        double age_h,
        double limit_share,
        EquivalentHours used,
        @Nullable EquivalentHours next) {

    /**
     * Sums up.
     *
     * @param visits of every oven after the age, first to last
     */
    public static Answer<HeatLedger> of(
            double age_h, double limit_share, List<EquivalentHours> visits, @Nullable EquivalentHours next) {
        Wanted wanted = new Wanted()
                .above0("age", "age", age_h, " h")
                .above0("limit", "limit as a share of the age", limit_share, "");
        for (EquivalentHours visit : visits) {
            wanted.notBelow0("visits", "equivalent time of a visit to an oven", visit.least_h(), " h");
        }
        if (next != null) {
            wanted.notBelow0("next", "equivalent time of the next bake", next.least_h(), " h");
        }
        return wanted.met()
                ? Answer.of(new HeatLedger(
                        age_h, limit_share, visits.stream().reduce(EquivalentHours.NONE, EquivalentHours::plus), next))
                : wanted.refusal();
    }

    public double limit_h() {
        return limit_share * age_h;
    }

    public double share() {
        return used.usual_h() / age_h;
    }

    /** What is left before the next visit; below 0 where the limit is passed already. */
    public double left_h() {
        return limit_h() - used.usual_h();
    }

    /** Share after the next visit. */
    public double shareAfter() {
        return (used.usual_h() + (next == null ? 0 : next.usual_h())) / age_h;
    }

    /** Whether the next visit stays inside the limit; what a sum loses in its last digits is forgiven. */
    public boolean holds() {
        return shareAfter() <= limit_share + 1e-9;
    }

    /**
     * The sum in one sentence.
     *
     * @param aged whether an age of the frame is known, since which it is counted
     */
    public String words(boolean aged) {
        String seen = "The frame has seen " + Said.hours(used.usual_h());
        String so = aged
                ? seen + " since its age of " + Said.hours(age_h) + ", " + Said.percent(share()) + " of it"
                : seen + " in ovens, " + Said.percent(share()) + " of a usual age of " + Said.hours(age_h)
                        + "; no age of it is recorded here";
        if (next == null) {
            return so + "; " + Said.percent(limit_share) + " are allowed, " + Said.hours(Math.max(0, left_h()))
                    + " are left.";
        }
        return so + "; the next bake adds " + Said.hours(next.usual_h()) + " and makes " + Said.percent(shareAfter())
                + ", of " + Said.percent(limit_share) + " allowed.";
    }
}
