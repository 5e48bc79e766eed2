package org.trammel.calc.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.trammel.calc.units.Answer;

/** Groups of readings taken together, each summed up. */
record Groups(int size, List<Summary> summaries) {

    static Answer<Groups> of(List<List<Double>> groups) {
        Asked asked = new Asked();
        if (!asked.holds(!groups.isEmpty(), "groups", "There is no group of readings.")) {
            return asked.refusal();
        }
        int size = groups.get(0).size();
        asked.holds(
                size >= 2 && size <= ControlConstants.LARGEST,
                "groups",
                "Groups of " + size + " cannot be charted: from 2 to " + ControlConstants.LARGEST + " readings can.");
        for (int i = 0; i < groups.size() && asked.met(); i++) {
            asked.holds(
                    groups.get(i).size() == size,
                    "groups",
                    "Group " + (i + 1) + " has " + groups.get(i).size() + " readings, the first has " + size
                            + ": limits hold for groups of one size.");
            asked.numbers("groups", "In group " + (i + 1) + ", reading", groups.get(i));
        }
        if (!asked.met()) {
            return asked.refusal();
        }
        List<Summary> summaries = new ArrayList<>(groups.size());
        groups.forEach(group -> summaries.add(Summary.ofNumbers(Summary.numbers(group))));
        return Answer.of(new Groups(size, summaries));
    }

    double mean() {
        return average(Summary::mean);
    }

    double meanRange() {
        return average(Groups::range);
    }

    double meanDeviation() {
        return average(Summary::deviation);
    }

    static double range(Summary group) {
        return group.most() - group.least();
    }

    private double average(ToDoubleFunction<Summary> figure) {
        return summaries.stream().mapToDouble(figure).average().orElse(0);
    }
}
