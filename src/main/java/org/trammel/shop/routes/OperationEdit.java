package org.trammel.shop.routes;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;

/** A change to the operations of a draft. */
sealed interface OperationEdit extends Edit {

    /**
     * Adds an operation.
     *
     * @param after code of the operation it follows; null puts it first
     */
    record Add(@Nullable String after, OperationFields fields) implements OperationEdit {

        @Override
        public Draft in(Draft draft) {
            OperationSheet added = fields.checked().with(List.of(), List.of());
            draft.requireFree(RetiredRow.Thing.OPERATION, added.code());
            List<OperationSheet> next = new ArrayList<>(draft.sheet().operations());
            next.add(after == null || after.isBlank() ? 0 : next.indexOf(draft.operation(after)) + 1, added);
            return draft.with(next);
        }

        @Override
        public String place() {
            return fields.code();
        }
    }

    /** Changes what an operation is. Clocks that name it follow a new code. */
    record Change(String operation, OperationFields fields) implements OperationEdit {

        @Override
        public Draft in(Draft draft) {
            OperationFields checked = fields.checked();
            OperationSheet before = draft.operation(operation);
            if (checked.code().equals(operation)) {
                return draft.changed(operation, o -> checked.with(o.steps(), o.characteristics()));
            }
            draft.requireFree(RetiredRow.Thing.OPERATION, checked.code());
            Draft changed = draft.changed(operation, o -> checked.with(before.steps(), before.characteristics()));
            return changed.withClocks(draft.sheet().clocks().stream()
                    .map(clock -> ClockEdit.renamed(clock, operation, checked.code()))
                    .toList());
        }

        @Override
        public String place() {
            return operation;
        }
    }

    /** Moves an operation one place. */
    record Move(String operation, boolean up) implements OperationEdit {

        @Override
        public Draft in(Draft draft) {
            List<OperationSheet> all = draft.sheet().operations();
            return draft.with(Draft.moved(all, all.indexOf(draft.operation(operation)), up));
        }

        @Override
        public String place() {
            return operation;
        }
    }

    /**
     * Makes two operations of one: the first steps stay, the others and the characteristics named go to the second. The
     * gate goes with the second, because it decides what follows.
     *
     * @param stay how many steps stay
     * @param characteristics codes of the characteristics that go to the second
     */
    record Split(String operation, int stay, List<String> characteristics, String code, String name)
            implements OperationEdit {

        public Split {
            characteristics = characteristics == null ? List.of() : List.copyOf(characteristics);
        }

        @Override
        public Draft in(Draft draft) {
            OperationSheet whole = draft.operation(operation);
            String second = Said.operation(code);
            draft.requireFree(RetiredRow.Thing.OPERATION, second);
            Said.within(
                    "stay",
                    "The number of steps that stay",
                    stay,
                    0,
                    whole.steps().size());
            for (String wanted : characteristics) {
                if (!draft.holding(wanted).code().equals(operation)) {
                    throw Said.refused(
                            "characteristics",
                            "Characteristic " + wanted + " is not one of operation " + operation + ".",
                            "Name characteristics of this operation.");
                }
            }
            Set<String> go = Set.copyOf(characteristics);
            List<CharacteristicSheet> kept = whole.characteristics().stream()
                    .filter(c -> !go.contains(c.code()))
                    .toList();
            List<CharacteristicSheet> gone = whole.characteristics().stream()
                    .filter(c -> go.contains(c.code()))
                    .toList();
            List<StepSheet> first = whole.steps().subList(0, stay);
            List<StepSheet> rest = whole.steps().subList(stay, whole.steps().size());
            if (first.isEmpty() && kept.isEmpty() || rest.isEmpty() && gone.isEmpty()) {
                throw Said.refused("stay", "One of the two would be empty.", "Leave something to do in both.");
            }
            OperationFields fields = OperationFields.of(whole);
            OperationSheet one = fields.withoutGate().with(first, kept);
            OperationSheet two =
                    fields.named(second, Said.line("name", "Name", name, 120)).with(rest, gone);
            Draft split = draft.with(
                    Draft.replaced(draft.sheet().operations(), o -> o.code().equals(operation), List.of(one, two)));
            return split.withClocks(draft.sheet().clocks().stream()
                    .map(clock -> startedAfterSplit(clock, first, second))
                    .toList());
        }

        /** A clock that the finish starts, or a step that went over, starts at the second operation now. */
        private ClockSheet startedAfterSplit(ClockSheet clock, List<StepSheet> first, String second) {
            boolean stays = first.stream().anyMatch(step -> clock.code().equals(step.startsClock()));
            return clock.startedBy().equals(operation) && !stays
                    ? new ClockSheet(
                            clock.code(),
                            clock.name(),
                            clock.kind(),
                            clock.minutes(),
                            second,
                            clock.gates(),
                            clock.source())
                    : clock;
        }

        @Override
        public String place() {
            return operation;
        }
    }

    /** Leaves an operation out of this revision and those that follow. */
    record Retire(String operation) implements OperationEdit {

        @Override
        public Draft in(Draft draft) {
            OperationSheet gone = draft.operation(operation);
            List<String> clocks = draft.sheet().clocks().stream()
                    .filter(clock ->
                            clock.startedBy().equals(operation) || clock.gates().contains(operation))
                    .map(ClockSheet::code)
                    .toList();
            if (!clocks.isEmpty()) {
                throw Refusal.state(
                        "Operation " + operation + " was not retired.",
                        "The clock " + String.join(", ", clocks) + " names it.",
                        "Change or retire the clock first.");
            }
            List<OperationSheet> next = new ArrayList<>(draft.sheet().operations());
            next.remove(gone);
            return draft.with(next);
        }

        @Override
        public String place() {
            return operation;
        }
    }

    /** Brings back an operation of the released revision that this draft retired, as it was. */
    record Restore(String operation) implements OperationEdit {

        @Override
        public Draft in(Draft draft) {
            RouteSheet before = draft.released();
            OperationSheet back = before == null
                    ? null
                    : before.operations().stream()
                            .filter(o -> o.code().equals(operation))
                            .findFirst()
                            .orElse(null);
            if (before == null || back == null) {
                throw Refusal.missing(
                        "Operation " + operation + " was not brought back.",
                        "The released revision has no such operation.",
                        "Add it as a new one.");
            }
            draft.requireFree(RetiredRow.Thing.OPERATION, operation);
            List<String> earlier = before.operations().stream()
                    .takeWhile(o -> !o.code().equals(operation))
                    .map(OperationSheet::code)
                    .toList();
            List<OperationSheet> next = new ArrayList<>(draft.sheet().operations());
            int at = Stream.iterate(next.size() - 1, i -> i >= 0, i -> i - 1)
                            .filter(i -> earlier.contains(next.get(i).code()))
                            .findFirst()
                            .orElse(-1)
                    + 1;
            back.characteristics().forEach(c -> draft.requireFree(RetiredRow.Thing.CHARACTERISTIC, c.code()));
            next.add(at, back);
            return draft.with(next);
        }

        @Override
        public String place() {
            return operation;
        }
    }
}
