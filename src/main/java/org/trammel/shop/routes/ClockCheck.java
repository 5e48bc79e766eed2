package org.trammel.shop.routes;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** What the clocks of a draft must be: started somewhere, and closing or opening something that comes later. */
final class ClockCheck {

    private final RouteSheet route;
    private final List<String> order;
    private final List<Finding> findings = new ArrayList<>();

    private ClockCheck(RouteSheet route) {
        this.route = route;
        this.order = route.operations().stream().map(OperationSheet::code).toList();
    }

    static List<Finding> of(RouteSheet route) {
        ClockCheck check = new ClockCheck(route);
        Set<String> codes = new HashSet<>();
        for (ClockSheet clock : route.clocks()) {
            if (!codes.add(clock.code())) {
                check.finds(clock.code(), "Two clocks have this code.", "Give one of them another code.");
            }
            check.clock(clock);
        }
        for (OperationSheet operation : route.operations()) {
            operation.steps().forEach(step -> check.step(operation, step, codes));
            operation.characteristics().forEach(c -> check.coldSet(operation, c, codes));
        }
        return check.findings;
    }

    private void finds(String place, String why, String instead) {
        findings.add(new Finding(place, why, instead));
    }

    private void clock(ClockSheet clock) {
        if (clock.minutes() < 1) {
            finds(clock.code(), "It runs no time.", "Enter how long it runs.");
        }
        int start = order.indexOf(clock.startedBy());
        if (start < 0) {
            finds(
                    clock.code(),
                    "It is started by operation " + clock.startedBy() + ", which is not in the route.",
                    "Name the operation that starts it.");
        }
        for (String gate : clock.gates()) {
            int at = order.indexOf(gate);
            if (at < 0) {
                finds(
                        clock.code(),
                        "It names operation " + gate + ", which is not in the route.",
                        "Name operations of this route.");
            } else if (start >= 0 && at <= start) {
                finds(
                        clock.code(),
                        "It names operation " + gate + ", which does not come after " + clock.startedBy() + ".",
                        "Name operations that come after the one that starts it.");
            }
        }
        if (clock.gates().isEmpty() && (clock.kind() == ClockKind.WAIT || !namedByColdSet(clock.code()))) {
            finds(clock.code(), "It closes and opens nothing.", "Name the operations it is for, or retire the clock.");
        }
    }

    private void step(OperationSheet operation, StepSheet step, Set<String> codes) {
        if (step.startsClock() == null) {
            return;
        }
        if (!codes.contains(step.startsClock())) {
            finds(
                    operation.code(),
                    "The step \"" + step.text() + "\" starts the clock " + step.startsClock()
                            + ", which the route does not have.",
                    "Add the clock, or let the step start none.");
        } else if (route.clocks().stream()
                .filter(clock -> clock.code().equals(step.startsClock()))
                .noneMatch(clock -> clock.startedBy().equals(operation.code()))) {
            finds(
                    operation.code(),
                    "The step \"" + step.text() + "\" starts the clock " + step.startsClock()
                            + ", which names another operation as its start.",
                    "Let the clock name operation " + operation.code() + " as its start.");
        }
    }

    private void coldSet(OperationSheet operation, CharacteristicSheet c, Set<String> codes) {
        if (c.coldSetClock() == null) {
            return;
        }
        if (!codes.contains(c.coldSetClock())) {
            finds(
                    c.code(),
                    "Its cold-set window is the clock " + c.coldSetClock() + ", which the route does not have.",
                    "Add the clock, or allow no cold-set.");
            return;
        }
        ClockSheet window = route.clocks().stream()
                .filter(clock -> clock.code().equals(c.coldSetClock()))
                .findFirst()
                .orElseThrow();
        if (window.kind() != ClockKind.WINDOW) {
            finds(c.code(), "Its cold-set window is a waiting time.", "Name a clock that is a window.");
        } else if (order.indexOf(window.startedBy()) >= order.indexOf(operation.code())) {
            finds(
                    c.code(),
                    "Its cold-set window opens at " + window.startedBy() + ", not before operation " + operation.code()
                            + ".",
                    "Measure it after the operation that opens the window.");
        }
    }

    private boolean namedByColdSet(String code) {
        return route.operations().stream()
                .flatMap(operation -> operation.characteristics().stream())
                .anyMatch(c -> Objects.equals(c.coldSetClock(), code));
    }
}
