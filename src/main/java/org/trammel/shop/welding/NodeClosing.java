package org.trammel.shop.welding;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.AtHand;
import org.trammel.shop.travellers.Evidence;

/** What must be so before a node is closed, and what came of it, judged. */
@Component
class NodeClosing {

    private static final int MOST_WORDS = 2000;

    private final NodeBook book;
    private final NodeJudge judge;
    private final WeldFaults faults;
    private final Welders welders;
    private final Evidence evidence;
    private final AtHand atHand;

    NodeClosing(NodeBook book, NodeJudge judge, WeldFaults faults, Welders welders, Evidence evidence, AtHand atHand) {
        this.book = book;
        this.judge = judge;
        this.faults = faults;
        this.welders = welders;
        this.evidence = evidence;
        this.atHand = atHand;
    }

    /** Whoever opened a node closes it, or somebody who might have welded it. */
    void requireWhoCloses(Act act, WeldTurn.At at, NodeRecord.Opened opened, String deed) {
        if (act.by() == opened.by()) {
            return;
        }
        evidence.requireQualified(act, at.line().operationId(), deed);
        welders.requireCovered(at.procedure(), at.head(), at.operation(), act.by(), deed);
    }

    /** A photograph of the node as it was before this arc shows nothing of it. */
    void requirePhoto(WeldTurn.At at, long stepId, NodeRecord.Opened opened, String deed) {
        if (at.procedure().content().nodes().photos()
                && atHand.pictures(at.line().operationId()).stream()
                        .noneMatch(one -> Long.valueOf(stepId).equals(one.stepId())
                                && !one.at().isBefore(opened.at()))) {
            throw Refusal.state(
                    deed,
                    "Procedure " + at.procedure().called()
                            + " asks for a photograph of each node, and there is none since" + " its arc.",
                    "Take the photograph, then close the node.");
        }
    }

    /**
     * What came of a node. Everything that does not conform stands in one nonconformance, so that nothing is decided unseen.
     *
     * @param correction why it is entered again; null for what is entered first
     */
    NodeRecord.Done judged(
            Act act, WeldTurn.At at, NodeRecord node, Welds.End entry, @Nullable String correction, String deed) {
        NodeJudge.Judged judged = judge.of(at, node, entry, deed);
        if (judged.heat() == null) {
            requireSample(at, node, deed);
        }
        String words = cut(String.join("\n", judged.words()));
        String nonconformance = judged.conforming()
                ? null
                : faults.open(
                        act,
                        at.head(),
                        at.line().operationId(),
                        List.of(),
                        node.node() + ". " + String.join(" ", judged.wrong()));
        return new NodeRecord.Done(
                0,
                node.opened() == null ? 0 : node.opened().id(),
                at.procedure().id(),
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
                correction,
                act.by(),
                act.at());
    }

    /** A node is sampled while it is welded: where no other node is left to be the sample, this one is. */
    private void requireSample(WeldTurn.At at, NodeRecord node, String deed) {
        List<NodeRecord> others = book.all(at).stream()
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

    private static String cut(String words) {
        return words.length() <= MOST_WORDS ? words : words.substring(0, MOST_WORDS - 1) + "…";
    }
}
