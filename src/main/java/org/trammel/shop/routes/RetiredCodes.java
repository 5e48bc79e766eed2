package org.trammel.shop.routes;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Codes that one revision used and the next leaves out. */
final class RetiredCodes {

    private RetiredCodes() {}

    static List<Draft.RetiredCode> between(RouteSheet before, RouteSheet after) {
        Set<String> operations =
                after.operations().stream().map(OperationSheet::code).collect(Collectors.toSet());
        Set<String> characteristics = after.operations().stream()
                .flatMap(operation -> operation.characteristics().stream())
                .map(CharacteristicSheet::code)
                .collect(Collectors.toSet());
        List<Draft.RetiredCode> gone = new ArrayList<>();
        for (OperationSheet operation : before.operations()) {
            if (!operations.contains(operation.code())) {
                gone.add(new Draft.RetiredCode(
                        RetiredRow.Thing.OPERATION, operation.code(), operation.name(), before.letter()));
            }
            for (CharacteristicSheet c : operation.characteristics()) {
                if (!characteristics.contains(c.code())) {
                    gone.add(new Draft.RetiredCode(
                            RetiredRow.Thing.CHARACTERISTIC, c.code(), c.name(), before.letter()));
                }
            }
        }
        return gone;
    }
}
