package org.trammel.shop.welding;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.FrameSheet;

/** The nodes of an operation at hand: the one that an act is about, and what is told of it after. */
@Component
class NodeBook {

    private final NodeRecords records;
    private final WeldTurn turn;
    private final ActLog log;

    NodeBook(NodeRecords records, WeldTurn turn, ActLog log) {
        this.records = records;
        this.turn = turn;
        this.log = log;
    }

    WeldSheet sheet(WeldTurn.At at) {
        List<PurgeRecord> purges = records.purges(at.line().operationId());
        return new WeldSheet(
                at.line().operationId(),
                at.procedure().called(),
                at.joins() ? records.of(at.head(), at.operation()) : List.of(),
                purges.isEmpty() ? null : purges.get(purges.size() - 1));
    }

    List<NodeRecord> all(WeldTurn.At at) {
        return records.of(at.head(), at.operation());
    }

    NodeRecord node(WeldTurn.At at, long stepId, String deed) {
        if (!at.joins()) {
            throw Refusal.state(
                    deed,
                    "Procedure " + at.procedure().called() + " welds nothing at operation "
                            + at.line().code() + ".",
                    "Record it at the operation in which it is welded.");
        }
        return all(at).stream()
                .filter(one -> one.stepId() == stepId)
                .findFirst()
                .orElseThrow(() -> Refusal.input(
                        "node",
                        deed,
                        "Operation " + at.line().code() + " has no such node.",
                        "Choose one of its steps that cannot be undone."));
    }

    static FrameSheet.StepLine step(WeldTurn.At at, long stepId) {
        return at.operation().steps().stream()
                .filter(one -> one.stepId() == stepId)
                .findFirst()
                .orElseThrow();
    }

    WeldSheet told(Act act, WeldTurn.At at, String what, Map<String, ?> facts) {
        Map<String, Object> all = new HashMap<>(facts);
        all.put("operation", at.line().operationId());
        all.put("procedure", at.procedure().id());
        log.event(Chains.bearing(at.head().serial()), what, all);
        turn.come(act, at.line().operationId());
        return sheet(turn.of(at.line().operationId()));
    }
}
