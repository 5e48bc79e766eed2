package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.OperationSheet;
import org.trammel.shop.routes.Point;
import org.trammel.shop.routes.Signer;

class OperationStatesTest {

    private static final Instant NOW = Instant.parse("2026-03-18T07:30:00Z");

    @ParameterizedTest(name = "{0}: {1} → {2}")
    @CsvFileSource(resources = "/states/operation.csv", useHeadersInDisplayName = false, numLinesToSkip = 1)
    void goesWhereTheTableSaysOrRefusesNamingItsState(OperationState state, String verb, String after) {
        Operation operation = in(state);
        if (after.equals("refused")) {
            assertThatThrownBy(() -> carryOut(operation, verb))
                    .isInstanceOfSatisfying(
                            Refusal.class, refused -> assertThat(refused.why()).contains(state.word()));
            assertThat(operation.state()).isEqualTo(state);
        } else {
            carryOut(operation, verb);
            assertThat(operation.state()).isEqualTo(OperationState.valueOf(after));
        }
    }

    @Test
    void withoutAPointWorkDoneIsDone() {
        Operation operation = operation(Point.NONE);
        operation.begin(NOW);
        operation.workDone(NOW);
        assertThat(operation.state()).isEqualTo(OperationState.DONE);
    }

    private static Operation operation(Point point) {
        return new Operation(
                1,
                Operation.SPACING,
                new OperationSheet(
                        "080",
                        "After weld",
                        "4",
                        point,
                        List.of(Signer.SECOND),
                        null,
                        false,
                        true,
                        false,
                        false,
                        null,
                        "",
                        List.of(),
                        List.of()),
                false);
    }

    /** An operation brought to a state by its own verbs. */
    private static Operation in(OperationState state) {
        Operation operation = operation(Point.HOLD);
        switch (state) {
            case WAITING -> {
                // as released
            }
            case IN_WORK -> operation.begin(NOW);
            case STOPPED -> {
                operation.begin(NOW);
                operation.stop("shift ends");
            }
            case AWAY -> operation.sendOut();
            case AT_POINT -> {
                operation.begin(NOW);
                operation.workDone(NOW);
            }
            case DONE -> {
                operation.begin(NOW);
                operation.workDone(NOW);
                operation.signedOff(NOW);
            }
            case REPEATED -> operation.doneOver("NC-0001");
        }
        return operation;
    }

    private static void carryOut(Operation operation, String verb) {
        switch (verb) {
            case "begin" -> operation.begin(NOW);
            case "stop" -> operation.stop("shift ends");
            case "resume" -> operation.resume();
            case "send out" -> operation.sendOut();
            case "come back" -> operation.comeBack(NOW);
            case "finish work" -> operation.workDone(NOW);
            case "sign off" -> operation.signedOff(NOW);
            case "reopen" -> operation.reopen(null);
            case "do over" -> operation.doneOver("NC-0001");
            case "carry over" -> operation.carriedOver(in(OperationState.DONE), "still valid");
            default -> throw new IllegalArgumentException(verb);
        }
    }
}
