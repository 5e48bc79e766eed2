package org.trammel.calc.statistics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.trammel.calc.units.Answer;

/**
 * What gates let through at the first attempt, all together and in hours of rework.
 *
 * <pre>
 * rolled yield  Π kᵢ/nᵢ      rework of a gate  (1 − kᵢ/nᵢ) · hours     cost  hours · price of an hour
 * </pre>
 *
 * kᵢ of nᵢ frames passed gate i at the first attempt, hours is what a frame that did not costs to put right. Validity:
 * the product is that of a frame whose gates do not hang on each other; each frame that is put right passes then.
 *
 * <p>Source: the product of first-pass yields ("rolled throughput yield", common practice of quality work); the rest is
 * arithmetic.
 *
 * @param lines one for each gate, in the order of the route
 * @param rolled share of frames that pass every gate at the first attempt
 * @param reworkHours of a frame, on average
 * @param reworkCost the same in the money of the price
 */
public record GateYield(List<Line> lines, double rolled, double reworkHours, double reworkCost) {

    public GateYield {
        lines = List.copyOf(lines);
    }

    /**
     * What a gate saw.
     *
     * @param passed frames that passed at the first attempt
     * @param frames that came to it
     * @param hours to put one right that did not pass
     */
    public record Gate(String name, int passed, int frames, double hours) {}

    /**
     * What a gate does.
     *
     * @param firstPass with its interval
     * @param reworkHours of a frame, on average
     * @param share of all hours of rework, 0 if there are none
     */
    public record Line(Gate gate, Proportion firstPass, double reworkHours, double share) {}

    /**
     * Reckons yield and rework.
     *
     * @param pricePerHour of an hour of rework, in any money
     */
    public static Answer<GateYield> of(List<Gate> gates, double pricePerHour) {
        Asked asked = new Asked();
        asked.holds(!gates.isEmpty(), "gates", "There is no gate.");
        asked.notBelow0("pricePerHour", "price of an hour", pricePerHour);
        List<Proportion> firstPasses = new ArrayList<>();
        for (Gate gate : gates) {
            asked.notBelow0("hours", "time to put right what " + gate.name() + " found, in hours", gate.hours());
            Answer<Proportion> firstPass = Proportion.of(gate.passed(), gate.frames());
            if (firstPass instanceof Answer.Determined<Proportion> there) {
                firstPasses.add(there.value());
            } else {
                asked.holds(
                        false,
                        "gates",
                        "Of " + gate.name() + " no share can be taken: " + gate.passed() + " of " + gate.frames()
                                + " frames.");
            }
        }
        return asked.met() ? Answer.of(reckoned(gates, firstPasses, pricePerHour)) : asked.refusal();
    }

    private static GateYield reckoned(List<Gate> gates, List<Proportion> firstPasses, double pricePerHour) {
        double rolled = 1;
        double all = 0;
        for (int i = 0; i < gates.size(); i++) {
            rolled *= firstPasses.get(i).share();
            all += hours(gates.get(i), firstPasses.get(i));
        }
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < gates.size(); i++) {
            double hours = hours(gates.get(i), firstPasses.get(i));
            lines.add(new Line(gates.get(i), firstPasses.get(i), hours, all > 0 ? hours / all : 0));
        }
        return new GateYield(lines, rolled, all, all * pricePerHour);
    }

    private static double hours(Gate gate, Proportion firstPass) {
        return (1 - firstPass.share()) * gate.hours();
    }

    /** Where most hours go, as a sentence. */
    public String words() {
        if (reworkHours == 0) {
            return "No hours go into rework.";
        }
        Line worst = lines.stream()
                .max(Comparator.comparingDouble(Line::reworkHours))
                .orElseThrow();
        return "Rework takes " + Written.decimals(reworkHours, 2) + " h a frame; most of it, "
                + Written.decimals(worst.reworkHours(), 2) + " h or " + Written.percent(worst.share()) + ", comes from "
                + worst.gate().name() + ".";
    }
}
