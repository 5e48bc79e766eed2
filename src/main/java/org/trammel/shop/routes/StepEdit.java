package org.trammel.shop.routes;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.trammel.shop.records.Refusal;

/** A change to the steps of an operation. Steps are numbered from 1, as they stand. */
sealed interface StepEdit extends Edit {

    /** Code of the operation the step belongs to. */
    String operation();

    @Override
    default String place() {
        return operation();
    }

    /** Adds a step at the end. */
    record Add(String operation, StepSheet step) implements StepEdit {

        @Override
        public Draft in(Draft draft) {
            return StepEdit.steps(draft, operation, steps -> {
                steps.add(checked(step));
                return steps;
            });
        }
    }

    /** Changes a step. */
    record Change(String operation, int number, StepSheet step) implements StepEdit {

        @Override
        public Draft in(Draft draft) {
            return StepEdit.steps(draft, operation, steps -> {
                steps.set(StepEdit.index(operation, steps, number), checked(step));
                return steps;
            });
        }
    }

    /** Moves a step one place. */
    record Move(String operation, int number, boolean up) implements StepEdit {

        @Override
        public Draft in(Draft draft) {
            return StepEdit.steps(
                    draft, operation, steps -> Draft.moved(steps, StepEdit.index(operation, steps, number), up));
        }
    }

    /**
     * Makes two steps of one. A scan and what cannot be undone stay with the first; a photo, the start of a clock and what
     * the tick rests on go with the second.
     */
    record Split(String operation, int number, String first, String second) implements StepEdit {

        @Override
        public Draft in(Draft draft) {
            return StepEdit.steps(draft, operation, steps -> {
                int index = StepEdit.index(operation, steps, number);
                StepSheet whole = steps.get(index);
                steps.set(
                        index,
                        new StepSheet(
                                Said.line("first", "The first step", first, 120),
                                whole.instruction(),
                                false,
                                whole.irreversible(),
                                whole.lotKind(),
                                null,
                                whole.qualification(),
                                null,
                                whole.secondPerson()));
                steps.add(
                        index + 1,
                        new StepSheet(
                                Said.line("second", "The second step", second, 120),
                                "",
                                whole.photo(),
                                whole.irreversible(),
                                null,
                                whole.startsClock(),
                                whole.qualification(),
                                whole.proof(),
                                whole.secondPerson()));
                return steps;
            });
        }
    }

    /** Leaves a step out of this revision and those that follow. */
    record Retire(String operation, int number) implements StepEdit {

        @Override
        public Draft in(Draft draft) {
            return StepEdit.steps(draft, operation, steps -> {
                steps.remove(StepEdit.index(operation, steps, number));
                return steps;
            });
        }
    }

    private static Draft steps(Draft draft, String operation, UnaryOperator<List<StepSheet>> change) {
        return draft.changed(
                operation,
                o -> OperationFields.of(o).with(change.apply(new ArrayList<>(o.steps())), o.characteristics()));
    }

    private static int index(String operation, List<StepSheet> steps, int number) {
        if (number < 1 || number > steps.size()) {
            throw Refusal.missing(
                    Said.UNCHANGED,
                    "Operation " + operation + " has no step " + number + ".",
                    "Load the page again; somebody may have moved it.");
        }
        return number - 1;
    }

    private static StepSheet checked(StepSheet step) {
        return new StepSheet(
                Said.line("text", "The step", step.text(), 120),
                Said.orEmpty("instruction", "The instruction", step.instruction(), 400),
                step.photo(),
                step.irreversible(),
                Said.wordOrNone("lotKind", "The kind of lot", step.lotKind()),
                Said.wordOrNone("startsClock", "The clock", step.startsClock()),
                Said.wordOrNone("qualification", "The qualification", step.qualification()),
                step.proof(),
                step.secondPerson());
    }
}
