package org.trammel.calc.thermal;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/**
 * What an oven has to do, step by step.
 *
 * @param steps in their order, at least one; the bands of two that follow each other do not touch, so that a record shows
 *     which of them it is in
 * @param never_degC no thermocouple of any role may reach it, such as where the metal begins to melt; null for none
 * @param worth what the whole run must be worth, or null
 */
public record OvenProgramme(
        List<OvenStep> steps,
        @Nullable Double never_degC,
        @Nullable Worth worth) {

    private static final int MOST_STEPS = 20;
    private static final double LONGEST_H = 1000;

    public OvenProgramme {
        steps = List.copyOf(steps);
    }

    /**
     * Equivalent hours that are asked for.
     *
     * @param reference_degC at which they are counted
     * @param least_h that the coldest load thermocouple must reach, or null
     * @param most_h that the hottest must not pass, or null
     */
    public record Worth(
            double reference_degC,
            Activation activation,
            @Nullable Double least_h,
            @Nullable Double most_h) {}

    /** A programme that holds together. */
    public static Answer<OvenProgramme> of(List<OvenStep> steps, @Nullable Double never_degC, @Nullable Worth worth) {
        Wanted wanted = new Wanted()
                .holds(!steps.isEmpty(), "steps", "The programme has no step.")
                .holds(steps.size() <= MOST_STEPS, "steps", "The programme has more than " + MOST_STEPS + " steps.");
        for (int i = 0; i < steps.size(); i++) {
            check(wanted, steps.get(i), "steps[" + i + "].", "step " + (i + 1));
        }
        if (never_degC != null) {
            wanted.temperature("never", "temperature that is never reached", never_degC);
            for (OvenStep step : steps) {
                wanted.holds(
                        step.most_degC() < never_degC,
                        "never",
                        "The temperature that is never reached, " + Said.degC(never_degC) + ", lies in the band of "
                                + step.band() + " or below it.");
            }
        }
        if (worth != null) {
            wanted.temperature("worth.reference", "reference temperature", worth.reference_degC());
            if (worth.least_h() != null && worth.most_h() != null) {
                wanted.holds(
                        worth.least_h() <= worth.most_h(),
                        "worth.most",
                        "The most equivalent time of " + Said.hours(worth.most_h()) + " is less than the least of "
                                + Said.hours(worth.least_h()) + ".");
            }
        }
        if (wanted.met()) {
            bandsApart(wanted, steps);
        }
        return wanted.met() ? Answer.of(new OvenProgramme(steps, never_degC, worth)) : wanted.refusal();
    }

    private static void check(Wanted wanted, OvenStep step, String at, String name) {
        wanted.temperature(at + "set", "set temperature of " + name, step.set_degC())
                .notBelow0(at + "below", "band below the set temperature of " + name, step.below_K(), " K")
                .notBelow0(at + "above", "band above the set temperature of " + name, step.above_K(), " K")
                .above0(at + "soak", "soak of " + name, step.soak_h(), " h")
                .holds(
                        !(step.soak_h() > LONGEST_H),
                        at + "soak",
                        "The soak of " + name + " is longer than " + Said.hours(LONGEST_H) + ".");
        if (step.longestSoak_h() != null) {
            wanted.holds(
                    step.longestSoak_h() >= step.soak_h(),
                    at + "longestSoak",
                    "The longest soak of " + name + ", " + Said.hours(step.longestSoak_h())
                            + ", is less than its least, " + Said.hours(step.soak_h()) + ".");
        }
        limit(wanted, at + "overshoot", "overshoot of " + name, step.overshoot_K(), " K");
        limit(wanted, at + "spread", "spread of " + name, step.spread_K(), " K");
        limit(wanted, at + "steepestRise", "steepest rise to " + name, step.steepestRise_KPerH(), " K/h");
    }

    private static void limit(Wanted wanted, String input, String what, @Nullable Double limit, String unit) {
        if (limit != null) {
            wanted.notBelow0(input, what, limit, unit);
        }
    }

    private static void bandsApart(Wanted wanted, List<OvenStep> steps) {
        for (int i = 1; i < steps.size(); i++) {
            OvenStep one = steps.get(i - 1);
            OvenStep two = steps.get(i);
            wanted.holds(
                    one.most_degC() < two.least_degC() || two.most_degC() < one.least_degC(),
                    "steps[" + i + "].set",
                    "The bands of step " + i + ", " + one.band() + ", and of step " + (i + 1) + ", " + two.band()
                            + ", touch: a record would not show in which of them it is.");
        }
    }
}
