package org.trammel.shop.welding;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.materials.LotState;
import org.trammel.shop.materials.Lots;
import org.trammel.shop.materials.MadeOf;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;

/** Filler and gas in use at an operation, as they were scanned there. */
@Component
class WeldLots {

    private final Lots lots;
    private final Evidence evidence;

    WeldLots(Lots lots, Evidence evidence) {
        this.lots = lots;
        this.evidence = evidence;
    }

    /**
     * Lots of a kind that were scanned at an operation of a piece, the newest first; what an earlier loop of it scanned is not
     * in the welder's hand now.
     */
    List<MadeOf> inUse(FrameSheet.Head head, FrameSheet.OperationLine line, LotKind kind) {
        String operation = line.code();
        boolean over =
                evidence.operationsOf(head.travellerId(), operation).stream().anyMatch(id -> id < line.operationId());
        return lots.madeOf(head.serial()).stream()
                .filter(use -> use.kind() == kind
                        && !use.scrapped()
                        && use.part().equals(head.part())
                        && use.operation().equals(operation)
                        && (!over || line.startedAt() != null && !use.at().isBefore(line.startedAt())))
                .sorted(Comparator.comparing(MadeOf::useId).reversed())
                .toList();
    }

    /**
     * The lots in use, or a refusal: none scanned, blocked since, or of a class that the procedure does not name.
     *
     * @param classes what the procedure names; nothing is asked where it names none
     */
    String require(
            FrameSheet.Head head, FrameSheet.OperationLine line, LotKind kind, Procedure procedure, String deed) {
        List<String> classes = kind == LotKind.FILLER
                ? procedure.content().arc().fillers()
                : procedure.content().arc().gases();
        List<MadeOf> used = inUse(head, line, kind);
        if (classes.isEmpty()) {
            return joined(used);
        }
        if (used.isEmpty()) {
            throw Refusal.state(
                    deed,
                    "No " + kind.word() + " was scanned at operation " + line.code() + "; procedure "
                            + procedure.called() + " asks for " + String.join(" or ", classes) + ".",
                    "Scan the label of the " + kind.word() + " at its step.");
        }
        MadeOf newest = used.get(0);
        if (stopped(newest)) {
            throw Refusal.state(
                    deed,
                    newest.lot() + " was scanned and is " + newest.state().word() + " now.",
                    "Put it aside, and scan another lot. Call the QA lead for what was welded with it.");
        }
        String found = classOf(newest.lot());
        if (found == null || !classes.contains(found)) {
            throw Refusal.state(
                    deed,
                    newest.lot() + " is " + (found == null ? "of no class" : found) + "; procedure "
                            + procedure.called() + " asks for " + String.join(" or ", classes) + ".",
                    "Scan a lot of it at the step of the " + kind.word() + ".");
        }
        return joined(used.stream().filter(use -> !stopped(use)).toList());
    }

    private static boolean stopped(MadeOf use) {
        return use.state() == LotState.BLOCKED || use.state() == LotState.QUARANTINED;
    }

    private @Nullable String classOf(String lot) {
        return lots.byCode(lot).map(one -> one.materialClass()).orElse(null);
    }

    private static String joined(List<MadeOf> used) {
        return used.stream().map(MadeOf::lot).distinct().limit(8).collect(Collectors.joining(", "));
    }
}
