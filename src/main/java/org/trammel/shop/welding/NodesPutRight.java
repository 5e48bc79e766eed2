package org.trammel.shop.welding;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** What of a node needs no arc: what was entered wrongly is entered again, and a node that a loop did not touch stays. */
@Service
public class NodesPutRight {

    private final NodeDoneRepository done;
    private final NodeKeptRepository kept;
    private final NodeRecords records;
    private final NodeBook book;
    private final WeldTurn turn;
    private final NodeClosing closing;
    private final SeenNodes seen;
    private final Travellers travellers;
    private final Bench bench;

    NodesPutRight(
            NodeDoneRepository done,
            NodeKeptRepository kept,
            NodeRecords records,
            NodeBook book,
            WeldTurn turn,
            NodeClosing closing,
            SeenNodes seen,
            Travellers travellers,
            Bench bench) {
        this.done = done;
        this.kept = kept;
        this.records = records;
        this.book = book;
        this.turn = turn;
        this.closing = closing;
        this.seen = seen;
        this.travellers = travellers;
        this.bench = bench;
    }

    /**
     * Enters again what was entered of a node that is held. What stood before stays on the record, and its nonconformance is
     * decided by those who decide it: they see both.
     */
    @Transactional
    public WeldSheet correct(Act act, long operationId, long stepId, Welds.End entry, @Nullable String reason) {
        String deed = "The node was not corrected.";
        if (!turn.opens(act, "correct-node", operationId)) {
            return book.sheet(turn.of(operationId));
        }
        WeldTurn.At at = turn.atHand(act, operationId, deed);
        NodeRecord node = book.node(at, stepId, deed);
        if (node.state() != NodeRecord.State.HELD
                || node.kept() != null
                || node.opened() == null
                || node.done() == null
                || node.done().nonconformance() == null) {
            throw Refusal.state(
                    deed,
                    node.node() + " is " + node.state().word() + ", and nothing that was entered of it is in question.",
                    "Only what does not conform as it was entered is entered again.");
        }
        String why = TypedText.words("reason", "What was entered wrongly, and why,", deed, reason, 1000);
        closing.requireWhoCloses(act, at, node.opened(), deed);
        NodeRecord.Done again = closing.judged(act, at, node, entry, why, deed);
        done.saveAndFlush(
                new NodeDoneRow(operationId, stepId, node.node(), node.wrong().size() + 1, again, act));
        return book.told(
                act,
                at,
                "node-corrected",
                Map.of(
                        "step",
                        stepId,
                        "number",
                        node.wrong().size() + 1,
                        "conforming",
                        again.nonconformance() == null));
    }

    /**
     * Says that a node stays as an earlier loop of the operation left it, and ticks it. Only of what conforms there, and only
     * while nothing before the weld was done over since, and nothing was seen of it that does not let it stay.
     */
    @Transactional
    public WeldSheet keep(Act act, long operationId, long stepId) {
        String deed = "The node was not kept as it was welded.";
        if (!turn.opens(act, "keep-node", operationId)) {
            return book.sheet(turn.of(operationId));
        }
        WeldTurn.At at = turn.atHand(act, operationId, deed);
        NodeRecord node = book.node(at, stepId, deed);
        if (node.state() != NodeRecord.State.WAITING) {
            throw Refusal.state(
                    deed, node.node() + " is " + node.state().word() + ".", "Look at the sheet of the weld again.");
        }
        NodeRecord before = records.earlier(at.head(), at.operation(), node.node())
                .orElseThrow(() -> Refusal.state(
                        deed,
                        "No earlier loop of operation " + at.line().code() + " left it welded and conforming.",
                        "Open it before the arc, weld it, close it."));
        requireUntouched(at, before, deed);
        requireNothingSeen(at, before, deed);
        kept.saveAndFlush(
                new NodeKeptRow(operationId, stepId, node.node(), before.done().id(), act));
        if (!node.ticked() && NodeBook.step(at, stepId).lotKind() == null) {
            bench.tick(act, List.of(stepId), null, "stays as it was welded");
        }
        return book.told(
                act,
                at,
                "node-kept",
                Map.of("step", stepId, "done", before.done().id()));
    }

    /** The loop was put in for what a look found: the very node it was found at does not stay. */
    private void requireNothingSeen(WeldTurn.At at, NodeRecord before, String deed) {
        seen.against(at.head(), at.procedure(), before.node(), before.opened().at())
                .ifPresent(look -> {
                    throw Refusal.state(
                            deed,
                            before.node() + " was looked at since it was welded: " + look.words() + " "
                                    + look.nonconformance() + ", and nobody decided that it stays.",
                            "Open it before the arc, cut out what was found, weld it, close it.");
                });
    }

    private void requireUntouched(WeldTurn.At at, NodeRecord before, String deed) {
        for (FrameSheet.OperationLine one :
                travellers.sheet(at.head().travellerId()).operations()) {
            if (one.operationId() == at.line().operationId()) {
                return;
            }
            if (one.finishedAt() != null
                    && one.loop() > 0
                    && !one.code().equals(at.line().code())
                    && one.finishedAt().isAfter(before.done().at())) {
                throw Refusal.state(
                        deed,
                        "Operation " + one.code() + " was done over since it was welded.",
                        "Open it before the arc, weld it, close it.");
            }
        }
    }
}
