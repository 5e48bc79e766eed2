package org.trammel.shop.materials;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
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
    private final TubeIssueRepository issues;
    private final TubeRecords records;
    private final SawPlans plans;
    private final TubeRack rack;
    private final TubeShortage shortage;
    private final Remarks remarks;
    private final Travellers travellers;
    private final HasCome hasCome;

    TubeAnew(
            LotUseRepository uses,
            TubeIssueRepository issues,
            TubeRecords records,
            SawPlans plans,
            TubeRack rack,
            TubeShortage shortage,
            Remarks remarks,
            Travellers travellers,
            HasCome hasCome) {
        this.uses = uses;
        this.issues = issues;
        this.records = records;
        this.plans = plans;
        this.rack = rack;
        this.shortage = shortage;
        this.remarks = remarks;
        this.travellers = travellers;
        this.hasCome = hasCome;
    }

    @Override
    public Optional<Refusal> outstanding(AtItsGate operation) {
        List<MadeOf> tubes =
                uses.madeOf(operation.serial()).stream().filter(TubeAnew::tube).toList();
        return lacking(operation, tubes).or(() -> cannotStay(operation, tubes));
    }

    private static boolean tube(MadeOf made) {
        return made.kind() == LotKind.TUBE || made.place() != null;
    }

    /** Before the gate of the operation at which it was issued; later the shop decides by holds. */
    private Optional<Refusal> cannotStay(AtItsGate operation, List<MadeOf> tubes) {
        Set<Long> here = tubes.stream()
                .filter(made -> made.place() != null
                        && !made.scrapped()
                        && made.operation().equals(operation.code()))
                .map(MadeOf::useId)
                .collect(Collectors.toSet());
        return here.isEmpty()
                ? Optional.empty()
                : records.of(operation.operationId()).lines().stream()
                        .filter(line -> line.issued() != null
                                && line.wrong() != null
                                && here.contains(line.issued().useId()))
                        .findFirst()
                        .map(line -> cannotStay(operation, line, Objects.requireNonNull(line.issued())));
    }

    private static Refusal cannotStay(AtItsGate operation, TubeSheet.Line line, TubeIssued issued) {
        boolean aside = issued.state() == LotState.QUARANTINED || issued.state() == LotState.BLOCKED;
        return Refusal.state(
                operation.cannot(),
                aside
                        ? issued.lot() + ", issued as " + line.place().called() + ", is "
                                + issued.state().word() + "."
                        : "The " + line.place().called() + " cannot stay as it was issued. "
                                + Objects.requireNonNull(line.wrong()),
                "Scrap the piece on the sheet of tubes and scan another, or let the QA lead "
                        + (aside ? "release the lot." : "look at the lot again."));
    }

    private Optional<Refusal> lacking(AtItsGate operation, List<MadeOf> tubes) {
        List<MadeOf> lacking = lacking(tubes);
        if (lacking.isEmpty()) {
            return Optional.empty();
        }
        MadeOf gone = lacking.get(0);
        FrameSheet.Head at = travellers.headOf(operation.operationId());
        String instead = gone.place() == null
                ? "Scan the lot of the tube that is cut instead, or issue it from the sheet of its lot."
                : gone.part().equals(at.part())
                        ? "Scan the tube that is cut instead on the sheet of tubes."
                        : "Issue the tube that is cut instead from the sheet of its lot, to " + gone.part() + " as “"
                                + gone.position() + "”.";
        return Optional.of(Refusal.state(
                operation.cannot(),
                "A tube of " + gone.lot() + " was scrapped (" + gone.position()
                        + "), and none was issued in its place since.",
                instead));
    }

    /** What was scrapped and has no other in its place: each has its own to come, one that was scrapped in turn too. */
    private static List<MadeOf> lacking(List<MadeOf> tubes) {
        List<MadeOf> spare = new ArrayList<>(tubes);
        List<MadeOf> lacking = new ArrayList<>();
        // a place takes its own before a piece without one takes any
        List<MadeOf> missing = tubes.stream()
                .filter(MadeOf::missing)
                .sorted(Comparator.comparing(gone -> gone.place() == null))
                .toList();
        for (MadeOf gone : missing) {
            Optional<MadeOf> other =
                    spare.stream().filter(one -> takesThePlace(one, gone)).findFirst();
            other.ifPresentOrElse(spare::remove, () -> lacking.add(gone));
        }
        return lacking;
    }

    /** One that came into the same part after it, to the same place where it had one, else since it was scrapped. */
    private static boolean takesThePlace(MadeOf other, MadeOf gone) {
        return other.useId() > gone.useId()
                && other.part().equals(gone.part())
                && (gone.place() == null
                        ? gone.scrappedAt() == null || !other.at().isBefore(gone.scrappedAt())
                        : gone.place().equals(other.place()));
    }

    /**
     * A part that was joined has no sheet of tubes any more: what is issued to it by the name of a place that lost its tube
     * goes to that place, if it is the tube of the drawing.
     */
    void takesPlace(Act act, LotRow row, long useId, Destination to) {
        if (row.kind() != LotKind.TUBE && row.kind() != LotKind.FITTING) {
            return;
        }
        Optional<MadeOf> lost =
                lacking(uses.madeOf(to.serial()).stream()
                                .filter(made -> made.useId() != useId && tube(made))
                                .toList())
                        .stream()
                        .filter(gone -> gone.place() != null
                                && gone.part().equals(to.part())
                                && gone.position()
                                        .equalsIgnoreCase(to.position().strip()))
                        .findFirst();
        FrameSheet.Head part = travellers.inForce(to.serial(), to.part());
        if (lost.isEmpty() || part.currentOperationId() != null) {
            return;
        }
        String place = Objects.requireNonNull(lost.get().place());
        Section section = records.fitting(part, place, row.lot());
        long operation = travellers.heads(to.serial()).stream()
                .filter(head -> head.state().open())
                .map(FrameSheet.Head::currentOperationId)
                .filter(Objects::nonNull)
                .findFirst()
                .orElseThrow(() -> Refusal.state(
                        row.code() + " was not issued.",
                        "No operation of the frame is at hand.",
                        "Open the frame again to see where it stands."));
        issues.saveAndFlush(new TubeIssueRow(useId, operation, place, section, null, act.by()));
    }

    /** Lets the frame go on that waited for a tube, the whole too, inside the act that issued one to it. */
    void issued(Act act, LotRow lot, String serial, String part) {
        if (!lot.kind().metallic() || uses.madeOf(serial).stream().noneMatch(made -> made.missing() && tube(made))) {
            return;
        }
        travellers.heads(serial).stream()
                .filter(head -> head.state().open()
                        && (head.part().equals(part) || head.part().isEmpty()))
                .map(FrameSheet.Head::currentOperationId)
                .filter(Objects::nonNull)
                .forEach(operation -> hasCome.to(act, operation));
    }

    /** Tells, inside the act that scrapped a tube, which sections of its metal no longer reach for all that wait. */
    void scrapped(Act act, LotRow lot, String serial, long useId) {
        String metal = lot.lot().metal();
        if (lot.lot().kind() != LotKind.TUBE || metal == null) {
            return;
        }
        uses.madeOf(serial).stream()
                .filter(made -> made.useId() == useId && made.place() != null)
                .findFirst()
                .flatMap(gone -> shortage.after(gone, metal, serial))
                .ifPresent(who -> remarks.callWithin(
                        act, null, null, "A tube of " + lot.code() + " was scrapped from " + serial + ". " + who));
        if (rack.bars().isEmpty()) {
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
