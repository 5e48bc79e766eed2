package org.trammel.shop.materials;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.Awaited;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HasCome;
import org.trammel.shop.travellers.Remarks;
import org.trammel.shop.travellers.Travellers;

/**
 * The loop of a tube that is cut again. Until another tube went into a frame from which one was scrapped, no gate of it is
 * passed; and whoever waits for the same rack is told when it no longer has enough for all.
 */
@Component
class TubeAnew implements Awaited {

    private final LotUseRepository uses;
    private final SawPlans plans;
    private final TubeRack rack;
    private final Remarks remarks;
    private final Travellers travellers;
    private final HasCome hasCome;

    TubeAnew(
            LotUseRepository uses,
            SawPlans plans,
            TubeRack rack,
            Remarks remarks,
            Travellers travellers,
            HasCome hasCome) {
        this.uses = uses;
        this.plans = plans;
        this.rack = rack;
        this.remarks = remarks;
        this.travellers = travellers;
        this.hasCome = hasCome;
    }

    @Override
    public Optional<Refusal> outstanding(AtItsGate operation) {
        List<MadeOf> tubes = uses.madeOf(operation.serial()).stream()
                .filter(made -> made.kind() == LotKind.TUBE)
                .toList();
        return tubes.stream()
                .filter(MadeOf::scrapped)
                .filter(gone -> tubes.stream().noneMatch(other -> takesThePlace(other, gone)))
                .findFirst()
                .map(gone -> Refusal.state(
                        operation.cannot(),
                        "A tube of " + gone.lot() + " was scrapped (" + gone.position()
                                + "), and none was issued in its place since.",
                        "Scan the lot of the tube that is cut instead, or issue it from the sheet of its lot."));
    }

    /** Lets the frame go on that waited for a tube, inside the act that issued one to it. */
    void issued(Act act, LotRow lot, String serial, String part) {
        if (lot.lot().kind() != LotKind.TUBE
                || uses.madeOf(serial).stream().noneMatch(made -> made.scrapped() && made.kind() == LotKind.TUBE)) {
            return;
        }
        travellers.heads(serial).stream()
                .filter(head -> head.state().open() && head.part().equals(part))
                .map(FrameSheet.Head::currentOperationId)
                .filter(Objects::nonNull)
                .forEach(operation -> hasCome.to(act, operation));
    }

    /** Any tube that came into the same part after it; what was scrapped itself has its own to come. */
    private static boolean takesThePlace(MadeOf other, MadeOf gone) {
        return other.useId() > gone.useId() && other.part().equals(gone.part());
    }

    /** Tells, inside the act that scrapped a tube, which sections of its metal no longer reach for all that wait. */
    void scrapped(Act act, LotRow lot, String serial) {
        String metal = lot.lot().metal();
        if (lot.lot().kind() != LotKind.TUBE || metal == null || rack.bars().isEmpty()) {
            return;
        }
        List<SawPlan.Kind> lacking = plans.now().kinds().stream()
                .filter(kind -> kind.metal().equals(metal) && !kind.gaps().isEmpty())
                .toList();
        if (!lacking.isEmpty()) {
            remarks.callWithin(
                    act,
                    null,
                    null,
                    "A tube of " + lot.code() + " was scrapped from " + serial
                            + ", and the rack does not reach for all frames that wait: "
                            + lacking.stream()
                                    .map(kind -> kind.section() + " (" + String.join(" ", kind.gaps()) + ")")
                                    .collect(Collectors.joining("; ")));
        }
    }
}
