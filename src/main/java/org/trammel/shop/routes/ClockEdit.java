package org.trammel.shop.routes;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.trammel.shop.records.Refusal;

/** A change to the clocks of a draft. */
sealed interface ClockEdit extends Edit {

    /** Adds a clock. */
    record Add(ClockSheet clock) implements ClockEdit {

        @Override
        public Draft in(Draft draft) {
            ClockSheet added = ClockEdit.checked(clock);
            if (draft.sheet().clocks().stream().anyMatch(c -> c.code().equals(added.code()))) {
                throw Said.refused("code", "The clock " + added.code() + " is there already.", "Give another code.");
            }
            List<ClockSheet> next = new ArrayList<>(draft.sheet().clocks());
            next.add(added);
            return draft.withClocks(next);
        }

        @Override
        public String place() {
            return clock.code();
        }
    }

    /** Changes a clock; its code stays, because steps and characteristics name it. */
    record Change(String code, ClockSheet clock) implements ClockEdit {

        @Override
        public Draft in(Draft draft) {
            ClockEdit.known(draft, code);
            ClockSheet changed = ClockEdit.checked(clock);
            if (!changed.code().equals(code)) {
                throw Said.refused(
                        "code", "The code of a clock stays.", "Retire this clock and add another for a new code.");
            }
            return draft.withClocks(
                    Draft.replaced(draft.sheet().clocks(), c -> c.code().equals(code), List.of(changed)));
        }

        @Override
        public String place() {
            return code;
        }
    }

    /** Leaves a clock out of this revision and those that follow. */
    record Retire(String code) implements ClockEdit {

        @Override
        public Draft in(Draft draft) {
            ClockEdit.known(draft, code);
            for (OperationSheet operation : draft.sheet().operations()) {
                boolean started = operation.steps().stream().anyMatch(s -> code.equals(s.startsClock()));
                List<String> coldSet = operation.characteristics().stream()
                        .filter(c -> Objects.equals(c.coldSetClock(), code))
                        .map(CharacteristicSheet::code)
                        .toList();
                if (started || !coldSet.isEmpty()) {
                    throw Refusal.state(
                            "The clock " + code + " was not retired.",
                            started
                                    ? "A step of operation " + operation.code() + " starts it."
                                    : "It is the cold-set window of " + String.join(", ", coldSet) + ".",
                            "Take its code away there first.");
                }
            }
            return draft.withClocks(
                    Draft.replaced(draft.sheet().clocks(), c -> c.code().equals(code), List.of()));
        }

        @Override
        public String place() {
            return code;
        }
    }

    private static void known(Draft draft, String code) {
        if (draft.sheet().clocks().stream().noneMatch(c -> c.code().equals(code))) {
            throw Refusal.missing(
                    Said.UNCHANGED,
                    "Revision " + draft.sheet().letter() + " has no clock " + code + ".",
                    "Load the page again; somebody may have retired it.");
        }
    }

    private static ClockSheet checked(ClockSheet clock) {
        if (clock.kind() == null) {
            throw Said.refused("kind", "The kind of clock is missing.", "Choose a window or a waiting time.");
        }
        if (clock.minutes() < 1 || clock.minutes() > 525_600) {
            throw Said.refused(
                    "minutes",
                    "A clock runs from one minute to a year; this one runs " + clock.minutes() + " min.",
                    "Enter its time.");
        }
        return new ClockSheet(
                Said.word("code", "Code", clock.code()),
                Said.line("name", "Name", clock.name(), 120),
                clock.kind(),
                clock.minutes(),
                Said.operation(clock.startedBy()),
                clock.gates().stream().map(Said::operation).distinct().toList(),
                Said.line("source", "Source", clock.source(), 400));
    }

    /** The clock with one operation's code exchanged wherever it names it. */
    static ClockSheet renamed(ClockSheet clock, String from, String to) {
        return new ClockSheet(
                clock.code(),
                clock.name(),
                clock.kind(),
                clock.minutes(),
                clock.startedBy().equals(from) ? to : clock.startedBy(),
                clock.gates().stream()
                        .map(gate -> gate.equals(from) ? to : gate)
                        .toList(),
                clock.source());
    }
}
