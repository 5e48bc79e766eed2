package org.trammel.shop.routes;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;

/**
 * A draft while it is edited: values only, so that an edit either gives a new whole draft or refuses and changes nothing.
 *
 * @param sheet its content, without children
 * @param children its parts, by the codes of their routes
 * @param released the released revision it is compared with, null if there is none
 * @param retired codes that earlier revisions used and that are not given again
 */
record Draft(
        RouteSheet sheet,
        List<RouteFile.Child> children,
        @Nullable RouteSheet released,
        List<RetiredCode> retired) {

    /** An operation's or characteristic's code of an earlier revision, with what it meant and until when. */
    record RetiredCode(RetiredRow.Thing thing, String code, String name, String lastLetter) {}

    Draft with(List<OperationSheet> operations) {
        return with(operations, sheet.clocks());
    }

    Draft withClocks(List<ClockSheet> clocks) {
        return with(sheet.operations(), clocks);
    }

    Draft withChildren(List<RouteFile.Child> parts) {
        return new Draft(sheet, List.copyOf(parts), released, retired);
    }

    private Draft with(List<OperationSheet> operations, List<ClockSheet> clocks) {
        RouteSheet next = new RouteSheet(
                sheet.revisionId(),
                sheet.code(),
                sheet.name(),
                sheet.letter(),
                sheet.metal(),
                sheet.kind(),
                operations,
                clocks,
                sheet.children());
        return new Draft(next, children, released, retired);
    }

    /** The operation of this code. */
    OperationSheet operation(String code) {
        return sheet.operations().stream()
                .filter(operation -> operation.code().equals(code))
                .findFirst()
                .orElseThrow(() -> Refusal.missing(
                        Said.UNCHANGED,
                        "Revision " + sheet.letter() + " has no operation " + code + ".",
                        "Load the page again; somebody may have retired it."));
    }

    /** The operation that holds this characteristic. */
    OperationSheet holding(String characteristic) {
        return sheet.operations().stream()
                .filter(operation -> operation.characteristics().stream()
                        .anyMatch(c -> c.code().equals(characteristic)))
                .findFirst()
                .orElseThrow(() -> Refusal.missing(
                        Said.UNCHANGED,
                        "Revision " + sheet.letter() + " has no characteristic " + characteristic + ".",
                        "Load the page again; somebody may have retired it."));
    }

    /** This with one operation changed. */
    Draft changed(String code, UnaryOperator<OperationSheet> change) {
        operation(code);
        return with(sheet.operations().stream()
                .map(operation -> operation.code().equals(code) ? change.apply(operation) : operation)
                .toList());
    }

    /** Refuses a code that is taken or was retired; readings of years ago stand under it. */
    void requireFree(RetiredRow.Thing thing, String code) {
        boolean taken = thing == RetiredRow.Thing.OPERATION
                ? sheet.operations().stream().anyMatch(o -> o.code().equals(code))
                : sheet.operations().stream()
                        .flatMap(o -> o.characteristics().stream())
                        .anyMatch(c -> c.code().equals(code));
        if (taken) {
            throw Refusal.input(
                    "code", Said.UNCHANGED, "The code " + code + " is taken in this route.", "Give another code.");
        }
        retired.stream()
                .filter(old -> old.thing() == thing && old.code().equals(code))
                .findFirst()
                .ifPresent(old -> {
                    throw Refusal.input(
                            "code",
                            Said.UNCHANGED,
                            "The code " + code + " was \"" + old.name() + "\" up to revision " + old.lastLetter()
                                    + ", and records stand under it.",
                            "Give a code that was never used.");
                });
    }

    /** The same list with one of its items exchanged for others. */
    static <T> List<T> replaced(List<T> list, Predicate<T> which, List<T> by) {
        List<T> next = new ArrayList<>();
        for (T item : list) {
            if (which.test(item)) {
                next.addAll(by);
            } else {
                next.add(item);
            }
        }
        return next;
    }

    /** The same list with the item at a place one place up or down. */
    static <T> List<T> moved(List<T> list, int index, boolean up) {
        int to = up ? index - 1 : index + 1;
        if (to < 0 || to >= list.size()) {
            throw Refusal.state(
                    "It was not moved.",
                    "It is the " + (up ? "first" : "last") + " of its list already.",
                    "Move another one.");
        }
        List<T> next = new ArrayList<>(list);
        next.add(to, next.remove(index));
        return next;
    }
}
