package org.trammel.shop.welding;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.travellers.AtHand;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.FrameSheet;

/** Records what was welded, node by node: a node is opened before the arc, closed after it, and ticked by its closing. */
@Service
public class Welds {

    private static final int MOST_WORDS = 2000;

    private final NodeOpenedRepository opened;
    private final NodeDoneRepository done;
    private final RepairRepository repairs;
    private final NodeRecords records;
    private final WeldTurn turn;
    private final NodeOpening opening;
    private final NodeJudge judge;
    private final WeldFaults faults;
    private final Bench bench;
    private final AtHand atHand;
    private final ActLog log;

    Welds(
            NodeOpenedRepository opened,
            NodeDoneRepository done,
            RepairRepository repairs,
            NodeRecords records,
            WeldTurn turn,
            NodeOpening opening,
            NodeJudge judge,
            WeldFaults faults,
            Bench bench,
            AtHand atHand,
            ActLog log) {
        this.opened = opened;
        this.done = done;
        this.repairs = repairs;
        this.records = records;
        this.turn = turn;
        this.opening = opening;
        this.judge = judge;
        this.faults = faults;
        this.bench = bench;
        this.atHand = atHand;
        this.log = log;
    }

    /** What stands at an operation that a procedure guards. */
    @Transactional(readOnly = true)
    public WeldSheet of(long operationId) {
        return sheet(turn.of(operationId));
    }

    private WeldSheet sheet(WeldTurn.At at) {
        List<PurgeRecord> purges = records.purges(at.line().operationId());
        return new WeldSheet(
                at.line().operationId(),
                at.procedure().called(),
                at.joins() ? records.of(at.head(), at.operation()) : List.of(),
                purges.isEmpty() ? null : purges.get(purges.size() - 1));
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
        NodeRecord node = node(at, stepId, deed);
        NodeRecord.Opened begun = opening.judged(act, at, node, entry, deed);
        NodeOpenedRow row = opened.saveAndFlush(new NodeOpenedRow(
                operationId, stepId, node.node(), at.procedure().id(), begun, act));
        return told(
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

    /** Closes the node that is open, and ticks its step; what does not conform opens a nonconformance and is not ticked. */
    @Transactional
    public WeldSheet close(Act act, long operationId, long stepId, End entry) {
        String deed = "The node was not closed.";
        if (!turn.opens(act, "close-node", operationId)) {
            return of(operationId);
        }
        WeldTurn.At at = turn.atHand(act, operationId, deed);
        NodeRecord node = node(at, stepId, deed);
        if (node.state() != NodeRecord.State.OPEN || node.opened() == null) {
            throw Refusal.state(
                    deed, node.node() + " is " + node.state().word() + ", and not open.", "Open it before the arc.");
        }
        if (at.procedure().content().nodes().photos()
                && !atHand.photographed(operationId).contains(stepId)) {
            throw Refusal.state(
                    deed,
                    "Procedure " + at.procedure().called() + " asks for a photograph of each node, and there is none.",
                    "Take the photograph, then close the node.");
        }
        NodeJudge.Judged judged = judge.of(at, node, entry, deed);
        if (judged.heat() == null) {
            requireSample(at, node, deed);
        }
        String words = cut(String.join("\n", judged.words()));
        String nonconformance = judged.conforming() ? null : fault(act, at, node, judged.first());
        done.saveAndFlush(new NodeDoneRow(
                operationId,
                stepId,
                node.node(),
                new NodeRecord.Done(
                        node.opened().id(),
                        entry.ampsLeast(),
                        entry.ampsMost(),
                        entry.volts(),
                        entry.amps(),
                        entry.length_mm(),
                        entry.seconds(),
                        judged.efficiency(),
                        judged.heat(),
                        entry.colour(),
                        entry.fillet_mm(),
                        judged.gauge(),
                        words.lines().toList(),
                        nonconformance,
                        act.by(),
                        act.at()),
                act));
        if (nonconformance == null && !node.ticked() && step(at, stepId).lotKind() == null) {
            bench.tick(act, List.of(stepId), null, node.opened().reason());
        }
        return told(act, at, "node-closed", Map.of("step", stepId, "conforming", judged.conforming()));
    }

    private String fault(Act act, WeldTurn.At at, NodeRecord node, NodeJudge.Finding finding) {
        return faults.open(
                act, at.head(), at.line().operationId(), finding.gaugeKind(), node.node() + ". " + finding.words());
    }

    /** A node is sampled while it is welded: where no other node is left to be the sample, this one is. */
    private void requireSample(WeldTurn.At at, NodeRecord node, String deed) {
        List<NodeRecord> others = records.of(at.head(), at.operation()).stream()
                .filter(one -> one.stepId() != node.stepId())
                .toList();
        int wanted = at.procedure().samples(at.line().code(), others.size() + 1);
        long taken = others.stream().filter(NodeRecord::sampled).count();
        long left = others.stream().filter(one -> one.done() == null).count();
        if (wanted - taken > left) {
            throw Refusal.input(
                    "volts",
                    deed,
                    "Procedure " + at.procedure().called() + " asks for the heat input of " + wanted + " of its nodes; "
                            + taken + " have it, and too few are left.",
                    "Enter voltage, current, length and time of this one.");
        }
    }

    /** Says that a node is cut open and welded again; one too many is for the QA lead to decide. */
    @Transactional
    public WeldSheet repair(Act act, long operationId, long stepId, @Nullable String reason) {
        String deed = "The repair was not recorded.";
        if (!turn.opens(act, "repair-node", operationId)) {
            return of(operationId);
        }
        WeldTurn.At at = turn.atHand(act, operationId, deed);
        NodeRecord node = node(at, stepId, deed);
        if (node.state() != NodeRecord.State.DONE || node.opened() == null) {
            throw Refusal.state(
                    deed,
                    node.node() + " is " + node.state().word() + ".",
                    node.state() == NodeRecord.State.HELD
                            ? "Its nonconformance decides what becomes of it."
                            : "A node is repaired after it was welded.");
        }
        String why = TypedText.words("reason", "The reason", deed, reason, 1000);
        int number = node.repairs().size() + 1;
        int most = at.procedure().content().nodes().mostRepairs();
        String nonconformance = number <= most
                ? null
                : faults.open(
                        act,
                        at.head(),
                        operationId,
                        null,
                        node.node() + ". Repair " + number + " of at most " + most + ": " + why);
        repairs.saveAndFlush(new RepairRow(
                operationId,
                stepId,
                node.node(),
                new NodeRecord.Repair(node.opened().id(), number, why, nonconformance, act.by(), act.at()),
                act));
        return told(act, at, "node-to-repair", Map.of("step", stepId, "number", number, "allowed", number <= most));
    }

    private NodeRecord node(WeldTurn.At at, long stepId, String deed) {
        if (!at.joins()) {
            throw Refusal.state(
                    deed,
                    "Procedure " + at.procedure().called() + " welds nothing at operation "
                            + at.line().code() + ".",
                    "Record it at the operation in which it is welded.");
        }
        return records.of(at.head(), at.operation()).stream()
                .filter(one -> one.stepId() == stepId)
                .findFirst()
                .orElseThrow(() -> Refusal.input(
                        "node",
                        deed,
                        "Operation " + at.line().code() + " has no such node.",
                        "Choose one of its steps that cannot be undone."));
    }

    private static FrameSheet.StepLine step(WeldTurn.At at, long stepId) {
        return at.operation().steps().stream()
                .filter(one -> one.stepId() == stepId)
                .findFirst()
                .orElseThrow();
    }

    private WeldSheet told(Act act, WeldTurn.At at, String what, Map<String, ?> facts) {
        Map<String, Object> all = new java.util.HashMap<>(facts);
        all.put("operation", at.line().operationId());
        all.put("procedure", at.procedure().id());
        log.event(Chains.bearing(at.head().serial()), what, all);
        turn.come(act, at.line().operationId());
        return of(at.line().operationId());
    }

    private static String cut(String words) {
        return words.length() <= MOST_WORDS ? words : words.substring(0, MOST_WORDS - 1) + "…";
    }
}
