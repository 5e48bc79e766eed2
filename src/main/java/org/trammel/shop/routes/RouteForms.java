package org.trammel.shop.routes;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The forms of the route editor, as the browser sends them: an unticked box is not sent, lists are lines of text. */
final class RouteForms {

    private RouteForms() {}

    record OperationForm(
            @Nullable String op,
            @Nullable String after,
            String code,
            String name,
            @Nullable String station,
            Point point,
            @Nullable List<Signer> signers,
            @Nullable String qualification,
            @Nullable Boolean together,
            @Nullable Boolean outside,
            @Nullable Boolean irreversible,
            @Nullable Boolean joins,
            @Nullable Integer repeatLimit,
            @Nullable String caution) {

        /** A new operation where none is named, else a change of that one. */
        Edit edit() {
            OperationFields fields = new OperationFields(
                    code,
                    name,
                    station == null ? "" : station,
                    point,
                    signers == null ? List.of() : signers,
                    qualification,
                    yes(together),
                    yes(outside),
                    yes(irreversible),
                    yes(joins),
                    repeatLimit,
                    caution);
            return op == null || op.isEmpty()
                    ? new OperationEdit.Add(after, fields)
                    : new OperationEdit.Change(op, fields);
        }
    }

    record StepForm(
            String op,
            @Nullable Integer number,
            String text,
            @Nullable String instruction,
            @Nullable Boolean photo,
            @Nullable Boolean irreversible,
            @Nullable String lotKind,
            @Nullable String startsClock,
            @Nullable String qualification,
            @Nullable Proof proof,
            @Nullable Boolean secondPerson) {

        Edit edit() {
            StepSheet step = new StepSheet(
                    text,
                    instruction == null ? "" : instruction,
                    yes(photo),
                    yes(irreversible),
                    lotKind,
                    startsClock,
                    qualification,
                    proof,
                    yes(secondPerson));
            return number == null ? new StepEdit.Add(op, step) : new StepEdit.Change(op, number, step);
        }
    }

    record CharacteristicForm(
            String op,
            @Nullable String item,
            String code,
            String name,
            String unit,
            @Nullable Integer decimals,
            @Nullable Boolean fromDesign,
            @Nullable BigDecimal nominal,
            @Nullable BigDecimal lowerDeviation,
            @Nullable BigDecimal upperDeviation,
            String gaugeKind,
            @Nullable String points,
            Reduction reduction,
            Rule rule,
            @Nullable List<Signer> signers,
            @Nullable Boolean sided,
            @Nullable Boolean readBack,
            @Nullable Boolean secondPerson,
            @Nullable Boolean deciding,
            @Nullable String coldSetClock,
            @Nullable Integer coldSetAttempts,
            @Nullable BigDecimal triageTolerances,
            @Nullable BigDecimal coldSetAmount,
            @Nullable String source) {

        Edit edit() {
            CharacteristicSheet sheet = new CharacteristicSheet(
                    code,
                    name,
                    unit,
                    Objects.requireNonNullElse(decimals, 0),
                    yes(fromDesign),
                    nominal,
                    lowerDeviation,
                    upperDeviation,
                    gaugeKind,
                    lines(points),
                    reduction,
                    rule,
                    signers == null ? List.of() : signers,
                    yes(sided),
                    yes(readBack),
                    yes(secondPerson),
                    yes(deciding),
                    coldSetClock,
                    Objects.requireNonNullElse(coldSetAttempts, 0),
                    triageTolerances,
                    coldSetAmount,
                    source == null ? "" : source);
            return item == null || item.isEmpty()
                    ? new CharacteristicEdit.Add(op, sheet)
                    : new CharacteristicEdit.Change(item, sheet);
        }
    }

    record ClockForm(
            @Nullable String item,
            String code,
            String name,
            ClockKind kind,
            @Nullable Long minutes,
            String startedBy,
            @Nullable String gates,
            @Nullable String source) {

        Edit edit() {
            ClockSheet clock = new ClockSheet(
                    code,
                    name,
                    kind,
                    Objects.requireNonNullElse(minutes, 0L),
                    startedBy,
                    words(gates),
                    source == null ? "" : source);
            return item == null || item.isEmpty() ? new ClockEdit.Add(clock) : new ClockEdit.Change(item, clock);
        }
    }

    private static boolean yes(@Nullable Boolean ticked) {
        return Boolean.TRUE.equals(ticked);
    }

    private static List<String> lines(@Nullable String text) {
        return text == null ? List.of() : text.lines().toList();
    }

    static List<String> words(@Nullable String text) {
        return text == null
                ? List.of()
                : Stream.of(text.split("[,\\s]+"))
                        .filter(word -> !word.isEmpty())
                        .toList();
    }
}
