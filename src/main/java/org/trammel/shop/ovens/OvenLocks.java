package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.ThermocoupleRole;

/** Why an oven may not be loaded on a day: what was found of it last decides, and it must still stand. */
record OvenLocks(OvenState state, String stateReason, List<Fitted> fitted, List<OvenTest> tests, LocalDate today) {

    /** @param tests of the oven, newest first */
    OvenLocks {
        fitted = fitted.stream().filter(one -> one.removedAt() == null).toList();
        tests = List.copyOf(tests);
    }

    List<String> sentences() {
        List<String> found = new ArrayList<>();
        if (state != OvenState.IN_USE) {
            found.add("It is " + state.word() + (stateReason.isEmpty() ? "." : ": " + stateReason));
        }
        if (fitted.stream().noneMatch(one -> one.role() == ThermocoupleRole.LOAD)) {
            found.add("No thermocouple for the load is fitted.");
        }
        if (fitted.stream().noneMatch(one -> one.role() == ThermocoupleRole.CONTROL)) {
            found.add("No thermocouple for the control is fitted.");
        }
        standing("Its survey", "It was never surveyed.", newest(TestKind.SURVEY, null))
                .ifPresent(found::add);
        for (Fitted one : fitted) {
            standing(
                            "The accuracy test of " + one.code(),
                            one.code() + ", " + one.roleWord() + ", has no accuracy test.",
                            newest(TestKind.ACCURACY, one.code()))
                    .ifPresent(found::add);
        }
        return List.copyOf(found);
    }

    /** Temperatures at which a survey stands, coldest first. */
    List<BigDecimal> surveyed_degC() {
        Map<BigDecimal, OvenTest> newest = new TreeMap<>();
        tests.stream()
                .filter(test -> test.kind() == TestKind.SURVEY)
                .forEach(test -> newest.putIfAbsent(ProgrammeStep.bare(test.at_degC()), test));
        return newest.entrySet().stream()
                .filter(one -> one.getValue().good()
                        && one.getValue().dueOn() != null
                        && !one.getValue().dueOn().isBefore(today))
                .map(Map.Entry::getKey)
                .toList();
    }

    Optional<OvenTest> newest(TestKind kind, @Nullable String thermocouple) {
        return tests.stream()
                .filter(test -> test.kind() == kind)
                .filter(test -> thermocouple == null || thermocouple.equals(test.thermocouple()))
                .findFirst();
    }

    private Optional<String> standing(String what, String never, Optional<OvenTest> newest) {
        if (newest.isEmpty()) {
            return Optional.of(never);
        }
        LocalDate due = newest.get().dueOn();
        if (!newest.get().good() || due == null) {
            return Optional.of(what + " failed and was not repeated with a good result.");
        }
        return due.isBefore(today) ? Optional.of(what + " was due on " + due + ".") : Optional.empty();
    }
}
