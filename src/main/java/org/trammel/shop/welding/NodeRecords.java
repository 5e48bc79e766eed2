package org.trammel.shop.welding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;

/** Reads what stands of the nodes of an operation. */
@Component
@Transactional(readOnly = true)
class NodeRecords {

    private final NodeOpenedRepository opened;
    private final NodeDoneRepository done;
    private final RepairRepository repairs;
    private final PurgeRepository purges;
    private final WeldFaults faults;
    private final Evidence evidence;

    NodeRecords(
            NodeOpenedRepository opened,
            NodeDoneRepository done,
            RepairRepository repairs,
            PurgeRepository purges,
            WeldFaults faults,
            Evidence evidence) {
        this.opened = opened;
        this.done = done;
        this.repairs = repairs;
        this.purges = purges;
        this.faults = faults;
        this.evidence = evidence;
    }

    /** Each node of an operation in the order of the route. */
    List<NodeRecord> of(FrameSheet.Head head, FrameSheet.OperationSheetOfFrame operation) {
        long id = operation.line().operationId();
        Map<Long, NodeRecord.Opened> begun = new HashMap<>();
        opened.findByOperationIdInOrderById(List.of(id)).forEach(row -> begun.put(row.stepId(), row.opened()));
        Map<Long, NodeRecord.Done> closed = new HashMap<>();
        done.findByOperationIdInOrderById(List.of(id)).forEach(row -> closed.put(row.stepId(), row.done()));
        Map<String, List<NodeRecord.Repair>> mended = repairs(head.travellerId(), operation.line());
        Set<String> through = new HashSet<>();
        List<NodeRecord> nodes = new ArrayList<>();
        for (FrameSheet.StepLine step : operation.steps()) {
            if (!step.irreversible()) {
                continue;
            }
            NodeRecord.Opened last = begun.get(step.stepId());
            NodeRecord.Done came = closed.get(step.stepId());
            NodeRecord.Done end = last != null && came != null && came.openedId() == last.id() ? came : null;
            List<NodeRecord.Repair> mine = mended.getOrDefault(step.text(), List.of());
            nodes.add(new NodeRecord(
                    step.stepId(),
                    step.text(),
                    step.ticked(),
                    last,
                    end,
                    state(head.serial(), last, end, mine, through),
                    mine));
        }
        return nodes;
    }

    private NodeRecord.State state(
            String serial,
            NodeRecord.@Nullable Opened last,
            NodeRecord.@Nullable Done end,
            List<NodeRecord.Repair> mended,
            Set<String> through) {
        if (last == null) {
            return NodeRecord.State.WAITING;
        }
        if (end == null) {
            return NodeRecord.State.OPEN;
        }
        List<NodeRecord.Repair> since =
                mended.stream().filter(one -> one.openedId() == last.id()).toList();
        for (NodeRecord.Repair one : since) {
            if (one.nonconformance() == null) {
                return NodeRecord.State.TO_REPAIR;
            }
            if (!goesThrough(serial, one.nonconformance(), through)) {
                return NodeRecord.State.HELD;
            }
        }
        return end.nonconformance() == null || goesThrough(serial, end.nonconformance(), through)
                ? NodeRecord.State.DONE
                : NodeRecord.State.HELD;
    }

    private boolean goesThrough(String serial, String number, Set<String> through) {
        if (through.contains(number) || faults.letThrough(serial, number)) {
            through.add(number);
            return true;
        }
        return false;
    }

    /** Counted over the loops of an operation: a node that was cut open in an earlier one was cut open. */
    private Map<String, List<NodeRecord.Repair>> repairs(long travellerId, FrameSheet.OperationLine line) {
        Map<String, List<NodeRecord.Repair>> by = new HashMap<>();
        repairs.findByOperationIdInOrderById(evidence.operationsOf(travellerId, line.code()))
                .forEach(row -> by.computeIfAbsent(row.node(), node -> new ArrayList<>())
                        .add(row.repair()));
        return by;
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
        people.addAll(repairs.peopleAt(operationId));
        people.addAll(purges.peopleAt(operationId));
        return people;
    }
}
