package org.trammel.shop.assembly;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.materials.Lots;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/**
 * What the record of a build still lacks before it can be told whole: of every part in force its operations done, a lot of its
 * own where a step asks for one, and every reading settled, as it is for shipping; of the whole its torques and its ride.
 */
@Component
class BuildLacks {

    private static final String RIDE = "ride";

    private final Travellers travellers;
    private final Lots lots;
    private final FrameComponents components;
    private final TorqueSheets sheets;
    private final BuildRulesBook book;
    private final RideRepository rides;

    BuildLacks(
            Travellers travellers,
            Lots lots,
            FrameComponents components,
            TorqueSheets sheets,
            BuildRulesBook book,
            RideRepository rides) {
        this.travellers = travellers;
        this.lots = lots;
        this.components = components;
        this.sheets = sheets;
        this.book = book;
        this.rides = rides;
    }

    /** @param packing the operation at which it is asked; it and those after it are not done themselves */
    List<String> of(FrameSheet.Head head, long packing) {
        List<String> lacks = new ArrayList<>();
        List<FrameSheet.Head> pieces = new ArrayList<>(List.of(head));
        pieces.addAll(travellers.partsInForce(head.travellerId()));
        Set<String> used = new HashSet<>();
        Set<String> tubed = new HashSet<>();
        lots.madeOf(head.serial()).stream().filter(use -> !use.scrapped()).forEach(use -> {
            used.add(of(use.part(), use.operation()));
            if (use.place() != null) {
                tubed.add(use.part());
            }
        });
        boolean torqued = false;
        for (FrameSheet.Head piece : pieces) {
            for (FrameSheet.OperationSheetOfFrame operation : travellers.whole(piece.travellerId())) {
                if (operation.line().operationId() == packing) {
                    break;
                }
                lacks(piece, operation, used, tubed.contains(piece.part()), lacks);
                torqued |= torqued(piece, operation);
            }
        }
        if (!torqued) {
            lacks.add("torques: none is recorded of the whole bicycle");
        }
        if (!ridden(head, packing)) {
            lacks.add(RIDE + ": nobody is recorded to have ridden it");
        }
        return lacks;
    }

    private void lacks(
            FrameSheet.Head piece,
            FrameSheet.OperationSheetOfFrame operation,
            Set<String> used,
            boolean tubed,
            List<String> lacks) {
        String where = piece.mark() + ", operation " + operation.line().code() + " "
                + operation.line().name();
        switch (operation.line().state()) {
            case DONE -> {
                // Where tubes were issued place by place, the scan before the cut looks whether it is one of them, and
                // issues none.
                boolean wantsLots = operation.steps().stream()
                        .anyMatch(step -> step.lotKind() != null
                                && !(tubed && step.lotKind().equals(LotKind.TUBE.name())));
                if (wantsLots
                        && !used.contains(of(piece.part(), operation.line().code()))) {
                    lacks.add(where + ": no lot is recorded");
                }
                operation.characteristics().stream()
                        .filter(c -> !c.state().settled())
                        .forEach(c -> lacks.add(where + ": " + c.code() + " " + c.name() + " is "
                                + c.state().word()));
            }
            case REPEATED -> {
                // its loop speaks for it
            }
            default -> lacks.add(where + ": it is " + operation.line().state().word());
        }
    }

    /** The same operation may stand on the routes of several parts; a lot of one is none of another. */
    private static String of(String part, String operation) {
        return part + " " + operation;
    }

    private boolean torqued(FrameSheet.Head piece, FrameSheet.OperationSheetOfFrame operation) {
        boolean byHand = operation.characteristics().stream()
                .anyMatch(c ->
                        c.gaugeKind().equals(FrameComponents.TORQUE) && c.state() == CharacteristicState.CONFORMING);
        if (byHand) {
            return true;
        }
        List<TorqueSheet.Line> lines = sheets.of(
                        operation.line().operationId(),
                        operation.line().code(),
                        components.of(piece.serial(), piece.part()))
                .lines();
        return !lines.isEmpty() && lines.stream().allMatch(TorqueSheet.Line::whole);
    }

    /** Where no rules ask for a ride before packing, none is lacked. */
    private boolean ridden(FrameSheet.Head head, long packing) {
        BuildRules rules = book.inForce().orElse(null);
        if (rules == null) {
            return true;
        }
        List<FrameSheet.OperationSheetOfFrame> final_ = travellers.whole(head.travellerId()).stream()
                .filter(one -> one.line().operationId() != packing
                        && rules.rides(one.line().code()))
                .toList();
        return final_.isEmpty()
                || final_.stream()
                        .flatMap(one ->
                                rides.findByOperationIdOrderById(one.line().operationId()).stream())
                        .reduce((before, after) -> after)
                        .filter(row -> row.ridden().good())
                        .isPresent();
    }
}
