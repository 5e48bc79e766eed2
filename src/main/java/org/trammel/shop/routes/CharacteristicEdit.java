package org.trammel.shop.routes;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;

/** A change to the characteristics of a draft. */
sealed interface CharacteristicEdit extends Edit {

    /** Adds a characteristic to an operation, at the end. */
    record Add(String operation, CharacteristicSheet characteristic) implements CharacteristicEdit {

        @Override
        public Draft in(Draft draft) {
            CharacteristicSheet added = CharacteristicEdit.checked(characteristic);
            draft.requireFree(RetiredRow.Thing.CHARACTERISTIC, added.code());
            return CharacteristicEdit.list(draft, operation, all -> {
                all.add(added);
                return all;
            });
        }

        @Override
        public String place() {
            return characteristic.code();
        }
    }

    /** Changes a characteristic. */
    record Change(String code, CharacteristicSheet characteristic) implements CharacteristicEdit {

        @Override
        public Draft in(Draft draft) {
            CharacteristicSheet changed = CharacteristicEdit.checked(characteristic);
            String operation = draft.holding(code).code();
            if (!changed.code().equals(code)) {
                draft.requireFree(RetiredRow.Thing.CHARACTERISTIC, changed.code());
            }
            return CharacteristicEdit.list(
                    draft, operation, all -> Draft.replaced(all, c -> c.code().equals(code), List.of(changed)));
        }

        @Override
        public String place() {
            return code;
        }
    }

    /** Moves a characteristic one place within its operation. */
    record Move(String code, boolean up) implements CharacteristicEdit {

        @Override
        public Draft in(Draft draft) {
            return CharacteristicEdit.list(
                    draft,
                    draft.holding(code).code(),
                    all -> Draft.moved(
                            all,
                            all.stream().map(CharacteristicSheet::code).toList().indexOf(code),
                            up));
        }

        @Override
        public String place() {
            return code;
        }
    }

    /** Makes two of one, with the suffixes a and b: two nominals never share a row. */
    record Split(String code, String first, String second) implements CharacteristicEdit {

        @Override
        public Draft in(Draft draft) {
            OperationSheet operation = draft.holding(code);
            CharacteristicSheet whole = operation.characteristics().stream()
                    .filter(c -> c.code().equals(code))
                    .findFirst()
                    .orElseThrow();
            if (Character.isLetter(code.charAt(code.length() - 1))) {
                throw Refusal.state(
                        Said.UNCHANGED,
                        "Characteristic " + code + " came out of a split already.",
                        "Add another characteristic with a code of its own.");
            }
            CharacteristicSheet a = renamed(whole, code + "a", Said.line("first", "The first name", first, 120));
            CharacteristicSheet b = renamed(whole, code + "b", Said.line("second", "The second name", second, 120));
            draft.requireFree(RetiredRow.Thing.CHARACTERISTIC, a.code());
            draft.requireFree(RetiredRow.Thing.CHARACTERISTIC, b.code());
            return CharacteristicEdit.list(
                    draft,
                    operation.code(),
                    all -> Draft.replaced(all, c -> c.code().equals(code), List.of(a, b)));
        }

        @Override
        public String place() {
            return code;
        }
    }

    /** Leaves a characteristic out of this revision and those that follow. */
    record Retire(String code) implements CharacteristicEdit {

        @Override
        public Draft in(Draft draft) {
            return CharacteristicEdit.list(
                    draft,
                    draft.holding(code).code(),
                    all -> Draft.replaced(all, c -> c.code().equals(code), List.of()));
        }

        @Override
        public String place() {
            return code;
        }
    }

    /** Brings back a characteristic of the released revision that this draft retired, as it was. */
    record Restore(String code) implements CharacteristicEdit {

        @Override
        public Draft in(Draft draft) {
            RouteSheet before = draft.released();
            OperationSheet held = before == null
                    ? null
                    : before.operations().stream()
                            .filter(o -> o.characteristics().stream()
                                    .anyMatch(c -> c.code().equals(code)))
                            .findFirst()
                            .orElse(null);
            if (held == null) {
                throw Refusal.missing(
                        "Characteristic " + code + " was not brought back.",
                        "The released revision has no such characteristic.",
                        "Add it as a new one.");
            }
            draft.requireFree(RetiredRow.Thing.CHARACTERISTIC, code);
            return CharacteristicEdit.list(draft, held.code(), all -> {
                held.characteristics().stream()
                        .filter(c -> c.code().equals(code))
                        .forEach(all::add);
                return all;
            });
        }

        @Override
        public String place() {
            return code;
        }
    }

    private static Draft list(Draft draft, String operation, UnaryOperator<List<CharacteristicSheet>> change) {
        return draft.changed(
                operation,
                o -> OperationFields.of(o).with(o.steps(), change.apply(new ArrayList<>(o.characteristics()))));
    }

    private static CharacteristicSheet renamed(CharacteristicSheet c, String code, String name) {
        return new CharacteristicSheet(
                code,
                name,
                c.unit(),
                c.decimals(),
                c.fromDesign(),
                c.nominal(),
                c.lowerDeviation(),
                c.upperDeviation(),
                c.gaugeKind(),
                c.points(),
                c.reduction(),
                c.rule(),
                c.signers(),
                c.sided(),
                c.readBack(),
                c.secondPerson(),
                c.deciding(),
                c.coldSetClock(),
                c.coldSetAttempts(),
                c.triageTolerances(),
                c.coldSetAmount(),
                c.source());
    }

    private static CharacteristicSheet checked(CharacteristicSheet c) {
        if (c.reduction() == null || c.rule() == null) {
            throw Said.refused("rule", "How it is judged is missing.", "Choose how points reduce, and the rule.");
        }
        if (c.fromDesign() && c.nominal() != null) {
            throw Said.refused(
                    "nominal",
                    "The nominal comes from the design, and one is entered here too.",
                    "Leave it empty, or do not take it from the design.");
        }
        boolean coldSet = c.coldSetClock() != null && !c.coldSetClock().isBlank();
        return new CharacteristicSheet(
                Said.characteristic(c.code()),
                Said.line("name", "Name", c.name(), 120),
                Said.line("unit", "Unit", c.unit(), 20),
                Said.within("decimals", "The number of decimals", c.decimals(), 0, 6),
                c.fromDesign(),
                number("nominal", c.nominal()),
                number("lowerDeviation", c.lowerDeviation()),
                number("upperDeviation", c.upperDeviation()),
                Said.word("gaugeKind", "The gauge kind", c.gaugeKind()),
                Said.points(c.points()),
                c.reduction(),
                c.rule(),
                c.signers().stream().distinct().toList(),
                c.sided(),
                c.readBack(),
                c.secondPerson(),
                c.deciding(),
                Said.wordOrNone("coldSetClock", "The cold-set clock", c.coldSetClock()),
                coldSet ? Said.within("coldSetAttempts", "The number of attempts", c.coldSetAttempts(), 1, 9) : 0,
                c.deciding() ? null : number("triageTolerances", c.triageTolerances()),
                coldSet ? number("coldSetAmount", c.coldSetAmount()) : null,
                Said.line("source", "Source", c.source(), 400));
    }

    private static @Nullable BigDecimal number(String field, @Nullable BigDecimal number) {
        if (number == null) {
            return null;
        }
        BigDecimal plain = Figures.plain(number);
        if (plain.scale() > 6 || plain.precision() - plain.scale() > 9) {
            throw Said.refused(
                    field,
                    "A limit has nine digits before the decimal sign and six after it at most.",
                    "Enter it with fewer digits.");
        }
        return plain;
    }
}
