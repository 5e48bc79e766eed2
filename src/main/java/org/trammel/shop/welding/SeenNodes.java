package org.trammel.shop.welding;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** Reads what was seen of the nodes of a frame at an operation that looks. */
@Component
@Transactional(readOnly = true)
class SeenNodes {

    private final WeldLookRepository rows;
    private final NodeRecords records;
    private final WeldFaults faults;
    private final Evidence evidence;
    private final Travellers travellers;

    SeenNodes(
            WeldLookRepository rows, NodeRecords records, WeldFaults faults, Evidence evidence, Travellers travellers) {
        this.rows = rows;
        this.records = records;
        this.faults = faults;
        this.evidence = evidence;
        this.travellers = travellers;
    }

    /**
     * Each node that was welded, in the order of the route, with what was seen of it at this operation since its newest arc.
     * An operation that was not begun is not done over: what was seen at it before the node was welded again is of another weld.
     */
    List<SeenNode> of(FrameSheet.Head head, long operationId, Procedure procedure) {
        Map<String, List<SeenNode.Look>> seen = new HashMap<>();
        Map<String, List<SeenNode.Look>> before = new HashMap<>();
        Map<String, Instant> arcs = records.newestArcs(procedure.content().operations().weld().stream()
                .flatMap(code -> evidence.operationsOf(head.travellerId(), code).stream())
                .toList());
        everywhere(head, procedure)
                .forEach(row -> (row.operationId() == operationId
                                        && !row.look().at().isBefore(arcs.getOrDefault(row.node(), Instant.MIN))
                                ? seen
                                : before)
                        .computeIfAbsent(row.node(), node -> new ArrayList<>())
                        .add(row.look()));
        return nodes(head, procedure).stream()
                .map(node -> {
                    List<SeenNode.Look> looks = seen.getOrDefault(node, List.of());
                    return new SeenNode(
                            node,
                            procedure.content().looks().levelOf(node),
                            looks,
                            before.getOrDefault(node, List.of()),
                            !looks.isEmpty() && stands(head.serial(), looks));
                })
                .toList();
    }

    /** What was seen of the welds at every operation that looks, its loops and older revisions included. */
    private List<LookRow> everywhere(FrameSheet.Head head, Procedure procedure) {
        return rows.findByOperationIdInOrderById(procedure.content().operations().look().stream()
                .flatMap(code -> evidence.operationsOf(head.travellerId(), code).stream())
                .toList());
    }

    /**
     * What was seen of a node since it was welded and does not let it stay as it is: neither by a concession, nor cleared by
     * a newer look.
     *
     * @param since when its arc was struck
     */
    Optional<SeenNode.Look> against(FrameSheet.Head head, Procedure procedure, String node, Instant since) {
        Map<Long, List<SeenNode.Look>> byOperation = new LinkedHashMap<>();
        everywhere(head, procedure).stream()
                .filter(row -> row.node().equals(node) && row.look().at().isAfter(since))
                .forEach(row -> byOperation
                        .computeIfAbsent(row.operationId(), operation -> new ArrayList<>())
                        .add(row.look()));
        return byOperation.values().stream()
                .flatMap(looks -> IntStream.range(0, looks.size())
                        .filter(i -> looks.get(i).nonconformance() != null && !decidedToStay(head.serial(), looks, i))
                        .mapToObj(looks::get))
                .findFirst();
    }

    /** Of an operation that was done over, the nodes of its last loop. */
    private List<String> nodes(FrameSheet.Head head, Procedure procedure) {
        return procedure.content().operations().weld().stream()
                .map(code -> evidence.operationsOf(head.travellerId(), code))
                .filter(ids -> !ids.isEmpty())
                .map(ids -> ids.stream().max(Long::compare).orElseThrow())
                .flatMap(id -> travellers.operation(id).steps().stream())
                .filter(FrameSheet.StepLine::irreversible)
                .map(FrameSheet.StepLine::text)
                .distinct()
                .toList();
    }

    /**
     * What does not conform stays only by a concession, or where it was decided that it conforms and a newer look says so;
     * what was undecided may be looked at again by somebody else, since whoever measured it once knows which figures a line of
     * the table would cover.
     */
    private boolean stands(String serial, List<SeenNode.Look> looks) {
        return IntStream.range(0, looks.size()).allMatch(i -> {
            SeenNode.Look look = looks.get(i);
            String number = look.nonconformance();
            if (look.verdict() == LookVerdict.CONFORMING) {
                return true;
            }
            if (number == null) {
                return look.verdict() == LookVerdict.UNDECIDED && again(looks, i);
            }
            return decidedToStay(serial, looks, i);
        });
    }

    private boolean decidedToStay(String serial, List<SeenNode.Look> looks, int i) {
        String number = Objects.requireNonNull(looks.get(i).nonconformance());
        return faults.conceded(serial, number) || faults.cleared(serial, number) && conformingSince(looks, i);
    }

    private static boolean again(List<SeenNode.Look> looks, int i) {
        return looks.subList(i + 1, looks.size()).stream()
                .anyMatch(later -> later.imperfection() == looks.get(i).imperfection()
                        && later.by() != looks.get(i).by());
    }

    /** Whether the node was looked at since for the same thing, or as a whole, and conforms. */
    static boolean conformingSince(List<SeenNode.Look> looks, int i) {
        return looks.subList(i + 1, looks.size()).stream()
                .filter(later -> later.imperfection() == null
                        || later.imperfection() == looks.get(i).imperfection())
                .reduce((before, after) -> after)
                .filter(later -> later.verdict() == LookVerdict.CONFORMING)
                .isPresent();
    }

    /** Everybody who recorded something of the welds that are looked at, whatever the loop. */
    Set<Long> weldedBy(FrameSheet.Head head, Procedure procedure) {
        return procedure.content().operations().weld().stream()
                .flatMap(code -> evidence.operationsOf(head.travellerId(), code).stream())
                .flatMap(id -> records.peopleAt(id).stream())
                .collect(Collectors.toSet());
    }

    Set<Long> peopleAt(long operationId) {
        return rows.peopleAt(operationId);
    }

    Set<Long> lookersAt(long operationId) {
        return rows.lookersAt(operationId);
    }
}
