package org.trammel.shop.welding;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** Reads what stands of the nodes of an operation. */
@Component
@Transactional(readOnly = true)
class NodeRecords {

    private final NodeOpenedRepository opened;
    private final NodeDoneRepository done;
    private final NodeKeptRepository kept;
    private final RepairRepository repairs;
    private final PurgeRepository purges;
    private final WeldFaults faults;
    private final Evidence evidence;
    private final Travellers travellers;

    NodeRecords(
            NodeOpenedRepository opened,
            NodeDoneRepository done,
            NodeKeptRepository kept,
            RepairRepository repairs,
            PurgeRepository purges,
            WeldFaults faults,
            Evidence evidence,
            Travellers travellers) {
        this.opened = opened;
        this.done = done;
        this.kept = kept;
        this.repairs = repairs;
        this.purges = purges;
        this.faults = faults;
        this.evidence = evidence;
        this.travellers = travellers;
    }

    /** Each node of an operation in the order of the route. */
    List<NodeRecord> of(FrameSheet.Head head, FrameSheet.OperationSheetOfFrame operation) {
        long id = operation.line().operationId();
        List<Long> loops =
                evidence.operationsOf(head.travellerId(), operation.line().code());
        Map<Long, NodeRecord.Opened> begun = new HashMap<>();
        Map<Long, NodeRecord.Opened> everOpened = new HashMap<>();
        Map<String, Integer> arcs = new HashMap<>();
        opened.findByOperationIdInOrderById(loops).forEach(row -> {
            arcs.merge(row.node(), 1, Integer::sum);
            everOpened.put(row.opened().id(), row.opened());
            if (row.operationId() == id) {
                begun.put(row.stepId(), row.opened());
            }
        });
        Map<Long, List<NodeRecord.Done>> closed = new HashMap<>();
        Map<Long, NodeRecord.Done> everDone = new HashMap<>();
        done.findByOperationIdInOrderById(loops).forEach(row -> {
            closed.computeIfAbsent(row.done().openedId(), opening -> new ArrayList<>())
                    .add(row.done());
            everDone.put(row.done().id(), row.done());
        });
        Map<Long, NodeKeptRow> left = new HashMap<>();
        kept.findByOperationIdInOrderById(List.of(id)).forEach(row -> left.put(row.stepId(), row));
        Map<String, List<NodeRecord.Repair>> mended = repairs(loops);
        Decided decided = new Decided(head.serial());
        List<NodeRecord> nodes = new ArrayList<>();
        for (FrameSheet.StepLine step : operation.steps()) {
            if (!step.irreversible()) {
                continue;
            }
            NodeRecord.Opened last = begun.get(step.stepId());
            NodeKeptRow stays = last == null ? left.get(step.stepId()) : null;
            if (stays != null) {
                last = everOpened.get(everDone.get(stays.doneId()).openedId());
            }
            List<NodeRecord.Done> ends = last == null ? List.of() : closed.getOrDefault(last.id(), List.of());
            List<NodeRecord.Repair> mine = mended.getOrDefault(step.text(), List.of());
            nodes.add(new NodeRecord(
                    step.stepId(),
                    step.text(),
                    step.ticked(),
                    last,
                    ends.isEmpty() ? null : ends.get(ends.size() - 1),
                    ends.isEmpty() ? List.of() : ends.subList(0, ends.size() - 1),
                    stays == null ? null : stays.kept(),
                    state(decided, last, ends, mine),
                    arcs.getOrDefault(step.text(), 0),
                    mine));
        }
        return nodes;
    }

    /**
     * The node as the last loop before this one left it; empty unless it is welded there and stays so. What an older revision
     * left is another matter: whoever released the newer one said what becomes of it.
     */
    Optional<NodeRecord> earlier(FrameSheet.Head head, FrameSheet.OperationSheetOfFrame operation, String node) {
        return evidence.operationsOf(head.travellerId(), operation.line().code()).stream()
                .filter(id -> id < operation.line().operationId())
                .max(Long::compare)
                .filter(id -> travellers.headOf(id).travellerId() == head.travellerId())
                .flatMap(id -> of(head, travellers.operation(id)).stream()
                        .filter(one -> one.node().equals(node))
                        .filter(one -> one.state() == NodeRecord.State.DONE && one.done() != null)
                        .findFirst());
    }

    private static NodeRecord.State state(
            Decided decided,
            NodeRecord.@Nullable Opened last,
            List<NodeRecord.Done> ends,
            List<NodeRecord.Repair> mended) {
        if (last == null) {
            return NodeRecord.State.WAITING;
        }
        if (ends.isEmpty()) {
            return NodeRecord.State.OPEN;
        }
        List<NodeRecord.Repair> since =
                mended.stream().filter(one -> one.openedId() == last.id()).toList();
        if (!since.isEmpty()) {
            // What is cut open is no weld: a concession allows one repair more, and stands for no arc.
            return since.stream()
                            .allMatch(one -> one.nonconformance() == null || decided.conceded(one.nonconformance()))
                    ? NodeRecord.State.TO_REPAIR
                    : NodeRecord.State.HELD;
        }
        return decided.through(ends) ? NodeRecord.State.DONE : NodeRecord.State.HELD;
    }

    /** What was decided of a frame's nodes, asked once each. */
    private final class Decided {

        private final String serial;
        private final Map<String, Boolean> conceded = new HashMap<>();

        Decided(String serial) {
            this.serial = serial;
        }

        boolean conceded(String number) {
            return conceded.computeIfAbsent(number, one -> faults.conceded(serial, one));
        }

        /** Whether the newest record conforms or was conceded, and whatever stood before it was decided. */
        boolean through(List<NodeRecord.Done> ends) {
            NodeRecord.Done newest = ends.get(ends.size() - 1);
            if (newest.nonconformance() != null) {
                return conceded(newest.nonconformance());
            }
            return ends.subList(0, ends.size() - 1).stream()
                    .map(NodeRecord.Done::nonconformance)
                    .filter(Objects::nonNull)
                    .allMatch(number -> faults.cleared(serial, number) || conceded(number));
        }
    }

    /** Counted over the loops of an operation: a node that was cut open in an earlier one was cut open. */
    private Map<String, List<NodeRecord.Repair>> repairs(List<Long> loops) {
        Map<String, List<NodeRecord.Repair>> by = new HashMap<>();
        repairs.findByOperationIdInOrderById(loops)
                .forEach(row -> by.computeIfAbsent(row.node(), node -> new ArrayList<>())
                        .add(row.repair()));
        return by;
    }

    /** When the newest arc was struck on each node of these operations. */
    Map<String, Instant> newestArcs(List<Long> operations) {
        Map<String, Instant> newest = new HashMap<>();
        opened.findByOperationIdInOrderById(operations)
                .forEach(row -> newest.put(row.node(), row.opened().at()));
        return newest;
    }

    /** Every reading of the purge of an operation, oldest first. */
    List<PurgeRecord> purges(long operationId) {
        return purges.findByOperationIdInOrderById(List.of(operationId)).stream()
                .map(PurgeRow::purge)
                .toList();
    }

    Set<Long> peopleAt(long operationId) {
        Set<Long> people = new HashSet<>(opened.peopleAt(operationId));
        people.addAll(done.peopleAt(operationId));
        people.addAll(kept.peopleAt(operationId));
        people.addAll(repairs.peopleAt(operationId));
        people.addAll(purges.peopleAt(operationId));
        return people;
    }
}
