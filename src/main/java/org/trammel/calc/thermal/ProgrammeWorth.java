package org.trammel.calc.thermal;

import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.units.Answer;

/**
 * What an age is worth, beside the published ones of its alloy. Soaks alone are counted, no ramps: those of the published are
 * not known.
 *
 * @param hours at the reference temperature
 * @param beside each published schedule, in the order they were given
 * @param words what it may mean, one sentence; a screening, as hardness decides
 */
public record ProgrammeWorth(EquivalentHours hours, List<Beside> beside, String words) {

    /** More than so much above the longest of the published counts as more than it. */
    private static final double MORE = 1.25;

    private static final double LESS = 0.75;

    public ProgrammeWorth {
        beside = List.copyOf(beside);
    }

    /**
     * A published schedule and how the programme stands to it.
     *
     * @param hours what the schedule is worth at the same reference temperature
     * @param times how many times as much the programme is worth, by the usual activation energy
     * @param least_times the least by the activation energies held possible
     * @param greatest_times the greatest
     */
    public record Beside(
            AgeingSchedule schedule, EquivalentHours hours, double times, double least_times, double greatest_times) {}

    /**
     * Compares.
     *
     * @param soaks of the programme
     * @param published of the same alloy; may be none
     */
    public static Answer<ProgrammeWorth> of(
            List<AgeingSchedule.Soak> soaks,
            double reference_degC,
            Activation activation,
            List<AgeingSchedule> published) {
        Wanted wanted = new Wanted()
                .holds(!soaks.isEmpty(), "soaks", "The age has no soak.")
                .temperature("reference", "reference temperature", reference_degC);
        for (AgeingSchedule.Soak soak : soaks) {
            wanted.temperature("soaks", "temperature of a soak", soak.degC())
                    .above0("soaks", "time of a soak", soak.hours(), " h");
        }
        if (!wanted.met()) {
            return wanted.refusal();
        }
        EquivalentHours hours = worth(soaks, reference_degC, activation);
        List<Beside> beside = new ArrayList<>();
        for (AgeingSchedule schedule : published) {
            EquivalentHours other = worth(schedule.soaks(), reference_degC, activation);
            double usual = hours.usual_h() / other.usual_h();
            double low = hours.lowEnergy_h() / other.lowEnergy_h();
            double high = hours.highEnergy_h() / other.highEnergy_h();
            beside.add(new Beside(
                    schedule,
                    other,
                    usual,
                    Math.min(usual, Math.min(low, high)),
                    Math.max(usual, Math.max(low, high))));
        }
        return Answer.of(new ProgrammeWorth(hours, beside, words(beside)));
    }

    static EquivalentHours worth(List<AgeingSchedule.Soak> soaks, double reference_degC, Activation activation) {
        return soaks.stream()
                .map(soak -> activation.equivalent(soak.hours(), soak.degC(), reference_degC))
                .reduce(EquivalentHours.NONE, EquivalentHours::plus);
    }

    /** How many times as much as the most of the published it is worth, by the usual activation energy; 0 beside none. */
    public double timesTheMost() {
        return beside.stream().mapToDouble(Beside::times).min().orElse(0);
    }

    /** How many times as much as the least of the published; 0 beside none. */
    public double timesTheLeast() {
        return beside.stream().mapToDouble(Beside::times).max().orElse(0);
    }

    private static String words(List<Beside> beside) {
        if (beside.isEmpty()) {
            return "No published age of this alloy is known to set beside it; hardness decides.";
        }
        double most = beside.stream().mapToDouble(Beside::times).min().orElseThrow();
        double least = beside.stream().mapToDouble(Beside::times).max().orElseThrow();
        String of = beside.size() == 1 ? "the one published age" : "every one of " + beside.size() + " published ages";
        if (beside.stream().mapToDouble(Beside::least_times).min().orElseThrow() > MORE) {
            return "It is worth " + Said.figure(most, 1) + " to " + Said.figure(least, 1) + " times " + of
                    + ": over-aged against them, hardness required.";
        }
        if (beside.stream().mapToDouble(Beside::greatest_times).max().orElseThrow() < LESS) {
            return "It is worth " + Said.figure(most, 2) + " to " + Said.figure(least, 2) + " times " + of
                    + ": under-aged against them, hardness required.";
        }
        if (most > MORE || least < LESS) {
            return "It is worth " + Said.figure(most, 2) + " to " + Said.figure(least, 2) + " times " + of
                    + ", but by some activation energy held possible no more than they vary; hardness decides.";
        }
        return "It is worth " + Said.figure(most, 2) + " to " + Said.figure(least, 2) + " times the " + beside.size()
                + " published, within what they and the activation energies vary; hardness decides.";
    }
}
