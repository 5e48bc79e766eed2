package org.trammel.shop.routes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.trammel.shop.records.Refusal;

class DraftEditTest {

    private static final Draft DRAFT = new Draft(
            Sheets.route(
                    List.of(
                            Sheets.operation("050")
                                    .step(Sheets.step("Wipe"))
                                    .step(Sheets.starting("Bag", "CLEAN"))
                                    .sheet(),
                            Sheets.operation("060")
                                    .hold(Signer.WORKER, Signer.SECOND)
                                    .step(Sheets.step("Set"))
                                    .step(Sheets.step("Tack"))
                                    .characteristic(Sheets.characteristic("060-1"))
                                    .characteristic(Sheets.characteristic("060-2"))
                                    .sheet(),
                            Sheets.operation("070").sheet()),
                    List.of(Sheets.clock("CLEAN", "050", "060"), Sheets.clock("NEXT", "060", "070"))),
            List.of(),
            null,
            List.of());

    private static List<String> codes(Draft draft) {
        return draft.sheet().operations().stream().map(OperationSheet::code).toList();
    }

    private static List<String> steps(Draft draft, String operation) {
        return draft.operation(operation).steps().stream().map(StepSheet::text).toList();
    }

    @Test
    void operationsMoveByOnePlace() {
        assertThat(codes(new OperationEdit.Move("060", true).in(DRAFT))).containsExactly("060", "050", "070");
        assertThat(codes(new OperationEdit.Move("060", false).in(DRAFT))).containsExactly("050", "070", "060");
    }

    @Test
    void anOperationIsAddedWhereItIsWanted() {
        OperationFields fields = RouteShop.operation("055", Point.NONE, List.of());
        assertThat(codes(new OperationEdit.Add("050", fields).in(DRAFT))).containsExactly("050", "055", "060", "070");
        assertThat(codes(new OperationEdit.Add(null, fields).in(DRAFT))).containsExactly("055", "050", "060", "070");
    }

    @Test
    void clocksFollowANewCode() {
        Draft after =
                new OperationEdit.Change("060", RouteShop.operation("065", Point.HOLD, List.of(Signer.QA))).in(DRAFT);
        assertThat(after.sheet().clocks().get(0).gates()).containsExactly("065");
        assertThat(after.sheet().clocks().get(1).startedBy()).isEqualTo("065");
        assertThat(after.operation("065").characteristics()).hasSize(2);
    }

    @Test
    void theGateAndTheClockOfTheFinishGoWithTheSecondPart() {
        Draft after = new OperationEdit.Split("060", 1, List.of("060-2"), "065", "Tack").in(DRAFT);
        assertThat(codes(after)).containsExactly("050", "060", "065", "070");
        assertThat(after.operation("060").point()).isEqualTo(Point.NONE);
        assertThat(after.operation("060").signers()).isEmpty();
        assertThat(after.operation("065").point()).isEqualTo(Point.HOLD);
        assertThat(steps(after, "060")).containsExactly("Set");
        assertThat(steps(after, "065")).containsExactly("Tack");
        assertThat(after.operation("065").characteristics())
                .extracting(CharacteristicSheet::code)
                .containsExactly("060-2");
        assertThat(after.sheet().clocks().get(0).gates()).containsExactly("060");
        assertThat(after.sheet().clocks().get(1).startedBy()).isEqualTo("065");
    }

    @Test
    void aClockThatAStepOfTheFirstPartStartsStaysThere() {
        Draft before = new StepEdit.Move("050", 2, true).in(DRAFT);
        Draft after = new OperationEdit.Split("050", 1, List.of(), "052", "Wipe").in(before);
        assertThat(after.sheet().clocks().get(0).startedBy()).isEqualTo("050");
    }

    @Test
    void stepsMoveSplitAndRetire() {
        assertThat(steps(new StepEdit.Move("060", 2, true).in(DRAFT), "060")).containsExactly("Tack", "Set");
        Draft split = new StepEdit.Split("050", 2, "Fold", "Bag").in(DRAFT);
        assertThat(steps(split, "050")).containsExactly("Wipe", "Fold", "Bag");
        StepSheet first = split.operation("050").steps().get(1);
        StepSheet second = split.operation("050").steps().get(2);
        assertThat(first.lotKind()).isEqualTo("TUBE");
        assertThat(first.startsClock()).isNull();
        assertThat(second.lotKind()).isNull();
        assertThat(second.photo()).isTrue();
        assertThat(second.startsClock()).isEqualTo("CLEAN");
        assertThat(steps(new StepEdit.Retire("060", 1).in(DRAFT), "060")).containsExactly("Tack");
    }

    @Test
    void aCharacteristicIsSplitIntoAAndB() {
        Draft after = new CharacteristicEdit.Split("060-1", "Reach", "Stack").in(DRAFT);
        assertThat(after.operation("060").characteristics())
                .extracting(CharacteristicSheet::code, CharacteristicSheet::name)
                .containsExactly(
                        tuple("060-1a", "Reach"), tuple("060-1b", "Stack"), tuple("060-2", "Characteristic 060-2"));
    }

    static Stream<Arguments> refused() {
        OperationFields taken = RouteShop.operation("060", Point.NONE, List.of());
        return Stream.of(
                Arguments.of(new OperationEdit.Move("050", true), "first of its list"),
                Arguments.of(new OperationEdit.Move("070", false), "last of its list"),
                Arguments.of(new OperationEdit.Move("999", true), "no operation 999"),
                Arguments.of(new OperationEdit.Add("050", taken), "taken in this route"),
                Arguments.of(new OperationEdit.Change("050", taken), "taken in this route"),
                Arguments.of(new OperationEdit.Retire("060"), "CLEAN, NEXT names it"),
                Arguments.of(new OperationEdit.Split("070", 0, List.of(), "075", "x"), "would be empty"),
                Arguments.of(new OperationEdit.Split("060", 3, List.of(), "065", "x"), "from 0 to 2"),
                Arguments.of(
                        new OperationEdit.Split("050", 1, List.of("060-1"), "052", "x"), "not one of operation 050"),
                Arguments.of(new OperationEdit.Restore("040"), "no such operation"),
                Arguments.of(new StepEdit.Retire("050", 3), "no step 3"),
                Arguments.of(new StepEdit.Add("050", Sheets.step(" ")), "empty"),
                Arguments.of(new StepEdit.Add("050", Sheets.step("x".repeat(121))), "121 characters"),
                Arguments.of(new StepEdit.Add("050", Sheets.step("a\u202Eb")), "cannot be seen"),
                Arguments.of(new StepEdit.Add("050", Sheets.step("a\nb")), "more than one line"),
                Arguments.of(new CharacteristicEdit.Retire("999-1"), "no characteristic 999-1"),
                Arguments.of(new CharacteristicEdit.Add("050", Sheets.characteristic("060-1")), "taken in this route"),
                Arguments.of(new CharacteristicEdit.Add("050", Sheets.characteristic("x")), "a hyphen and a number"),
                Arguments.of(new ClockEdit.Add(Sheets.clock("CLEAN", "050", "060")), "there already"),
                Arguments.of(
                        new ClockEdit.Change("CLEAN", Sheets.clock("OTHER", "050", "060")), "code of a clock stays"),
                Arguments.of(new ClockEdit.Retire("CLEAN"), "A step of operation 050 starts it"),
                Arguments.of(
                        new ClockEdit.Add(new ClockSheet("Y", "Y", ClockKind.WAIT, 0, "050", List.of("060"), "own")),
                        "runs 0 min"),
                Arguments.of(new PartEdit.Add("1", "One", "X"), "one to four capitals"),
                Arguments.of(new PartEdit.Add("FT", "Front", "R-1"), "no part of itself"),
                Arguments.of(new PartEdit.Retire("SA"), "no part SA"));
    }

    @ParameterizedTest
    @MethodSource("refused")
    void whatCannotBeDoneIsRefusedWithTheFact(Edit edit, String why) {
        assertThatThrownBy(() -> edit.in(DRAFT)).isInstanceOfSatisfying(Refusal.class, refused -> {
            assertThat(refused.what() + " " + refused.why()).contains(why);
            assertThat(refused.instead()).isNotBlank();
        });
    }

    @ParameterizedTest
    @CsvSource({"030,true", "090a,true", "150.3,true", "080R,true", "30,false", "abc,false", "030-1,false", "0301,false"
    })
    void operationsAreNumberedAsOnTheTraveller(String code, boolean sound) {
        OperationEdit.Add add = new OperationEdit.Add(null, RouteShop.operation(code, Point.NONE, List.of()));
        if (sound) {
            assertThat(codes(add.in(DRAFT))).contains(code);
        } else {
            assertThatThrownBy(() -> add.in(DRAFT)).isInstanceOf(Refusal.class);
        }
    }

    @Test
    void aRetiredCodeIsNotGivenAgain() {
        Draft with = new Draft(
                DRAFT.sheet(),
                List.of(),
                null,
                List.of(new Draft.RetiredCode(RetiredRow.Thing.CHARACTERISTIC, "050-1", "Wetness", "C")));
        assertThatThrownBy(() -> new CharacteristicEdit.Add("050", Sheets.characteristic("050-1")).in(with))
                .isInstanceOfSatisfying(
                        Refusal.class,
                        refused -> assertThat(refused.why()).contains("Wetness").contains("revision C"));
    }

    @Test
    void aComparisonNamesWhatWasAddedRetiredChangedAndMoved() {
        RouteSheet before = DRAFT.sheet();
        Draft after = new OperationEdit.Move("070", true).in(DRAFT);
        after = new StepEdit.Retire("060", 1).in(after);
        after = new StepEdit.Add("060", Sheets.step("Check")).in(after);
        after = new CharacteristicEdit.Retire("060-2").in(after);
        after = new ClockEdit.Change(
                        "NEXT",
                        new ClockSheet("NEXT", "Clock", ClockKind.WINDOW, 90, "060", List.of("070"), "own trial"))
                .in(after);
        assertThat(Compare.of(before, after.sheet(), BigDecimal::toPlainString))
                .containsExactlyInAnyOrder(
                        new Changed("060", "retired", "step \"Set\""),
                        new Changed("060", "added", "step \"Check\""),
                        new Changed("060-2", "retired", "Characteristic 060-2"),
                        new Changed("NEXT", "changed", "minutes: 60 → 90"),
                        new Changed("060", "moved", "after 070"));
        assertThat(Compare.of(before, before, BigDecimal::toPlainString)).isEmpty();
    }
}
