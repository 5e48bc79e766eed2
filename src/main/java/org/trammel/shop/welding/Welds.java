package org.trammel.shop.welding;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.Holds;

/** Records what was welded, node by node: a node is opened before the arc, closed after it, and ticked by its closing. */
@Service
public class Welds {

    private final NodeOpenedRepository opened;
    private final NodeDoneRepository done;
    private final RepairRepository repairs;
    private final NodeBook book;
    private final WeldTurn turn;
    private final NodeOpening opening;
    private final NodeClosing closing;
    private final WeldFaults faults;
    private final Holds holds;
    private final Bench bench;

    Welds(
            NodeOpenedRepository opened,
            NodeDoneRepository done,
            RepairRepository repairs,
            NodeBook book,
            WeldTurn turn,
            NodeOpening opening,
            NodeClosing closing,
            WeldFaults faults,
            Holds holds,
            Bench bench) {
        this.opened = opened;
        this.done = done;
        this.repairs = repairs;
        this.book = book;
        this.turn = turn;
        this.opening = opening;
        this.closing = closing;
        this.faults = faults;
        this.holds = holds;
        this.bench = bench;
    }

    /** What stands at an operation that a procedure guards. */
    @Transactional(readOnly = true)
    public WeldSheet of(long operationId) {
        return book.sheet(turn.of(operationId));
    }

    /**
     * What is said when a node is begun.
     *
     * @param interpass_degC beside the last bead, where the procedure asks for it
     * @param reason why it is begun before an earlier step, where it is
     */
    public record Begin(
            @Nullable BigDecimal interpass_degC,
            @Nullable String gauge,
            @Nullable String reason) {}

    /** Opens a node. Whatever is not as the procedure asks is refused: no arc is struck. */
    @Transactional
    public WeldSheet open(Act act, long operationId, long stepId, Begin entry) {
        String deed = "The node was not opened.";
        if (!turn.opens(act, "open-node", operationId)) {
            return of(operationId);
        }
        WeldTurn.At at = turn.atHand(act, operationId, deed);
        NodeRecord node = book.node(at, stepId, deed);
        NodeRecord.Opened begun = opening.judged(act, at, node, entry, deed);
        NodeOpenedRow row = opened.saveAndFlush(new NodeOpenedRow(
                operationId, stepId, node.node(), at.procedure().id(), begun, act));
        return book.told(
                act,
                at,
                "node-opened",
                Map.of("step", stepId, "node", row.opened().id()));
    }

    /**
     * What is said when a node is welded; null for what was inside the range or is not asked.
     *
     * @param ampsLeast least current, where it lay outside the range
     * @param volts of a sampled length, as amps, length_mm and seconds
     */
    public record End(
            @Nullable BigDecimal ampsLeast,
            @Nullable BigDecimal ampsMost,
            @Nullable BigDecimal volts,
            @Nullable BigDecimal amps,
            @Nullable BigDecimal length_mm,
            @Nullable BigDecimal seconds,
            @Nullable BeadColour colour,
            @Nullable BigDecimal fillet_mm,
            @Nullable String gauge) {

        static End plain() {
            return new End(null, null, null, null, null, null, null, null, null);
        }
    }

    /**
     * Closes the node that is open, and ticks its step; what does not conform opens a nonconformance and is not ticked. What
     * came out is recorded under a hold too, and ticked after it.
     */
    @Transactional
    public WeldSheet close(Act act, long operationId, long stepId, End entry) {
        String deed = "The node was not closed.";
        if (!turn.opens(act, "close-node", operationId)) {
            return of(operationId);
        }
        WeldTurn.At at = turn.atHand(act, operationId, deed);
        NodeRecord node = book.node(at, stepId, deed);
        if (node.state() != NodeRecord.State.OPEN || node.opened() == null) {
            throw Refusal.state(
                    deed, node.node() + " is " + node.state().word() + ", and not open.", "Open it before the arc.");
        }
        closing.requireWhoCloses(act, at, node.opened(), deed);
        closing.requirePhoto(at, stepId, node.opened(), deed);
        NodeRecord.Done came = closing.judged(act, at, node, entry, null, deed);
        done.saveAndFlush(new NodeDoneRow(operationId, stepId, node.node(), 0, came, act));
        boolean conforming = came.nonconformance() == null;
        if (conforming && !node.ticked() && NodeBook.step(at, stepId).lotKind() == null && !holds.cover(operationId)) {
            bench.tick(act, List.of(stepId), null, node.opened().reason());
        }
        return book.told(act, at, "node-closed", Map.of("step", stepId, "conforming", conforming));
    }

    /**
     * Says that a node is cut open and welded again; one too many is for the QA lead to decide. What a loop welded again
     * heated the node as well as any repair, and counts.
     */
    @Transactional
    public WeldSheet repair(Act act, long operationId, long stepId, @Nullable String reason) {
        String deed = "The repair was not recorded.";
        if (!turn.opens(act, "repair-node", operationId)) {
            return of(operationId);
        }
        WeldTurn.At at = turn.atHand(act, operationId, deed);
        NodeRecord node = book.node(at, stepId, deed);
        if (node.state() != NodeRecord.State.DONE || node.opened() == null) {
            throw Refusal.state(
                    deed,
                    node.node() + " is " + node.state().word() + ".",
                    node.state() == NodeRecord.State.HELD
                            ? "Its nonconformance decides what becomes of it."
                            : "A node is repaired after it was welded.");
        }
        String why = TypedText.words("reason", "The reason", deed, reason, 1000);
        int number = node.arcs();
        int most = at.procedure().content().nodes().mostRepairs();
        String nonconformance = number <= most
                ? null
                : faults.open(
                        act,
                        at.head(),
                        operationId,
                        List.of(),
                        node.node() + ". Repair " + number + " of at most " + most + ": " + why);
        repairs.saveAndFlush(new RepairRow(
                operationId,
                stepId,
                node.node(),
                new NodeRecord.Repair(node.opened().id(), number, why, nonconformance, act.by(), act.at()),
                act));
        return book.told(
                act, at, "node-to-repair", Map.of("step", stepId, "number", number, "allowed", number <= most));
    }
}
