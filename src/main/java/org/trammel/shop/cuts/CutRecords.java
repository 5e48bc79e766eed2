package org.trammel.shop.cuts;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.materials.TubeSheets;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Traces;

/** Reads what was measured of the tubes of a frame. */
@Component
@Transactional(readOnly = true)
class CutRecords {

    private final CutRepository cuts;
    private final CutEndRepository ends;
    private final TubeSheets tubes;
    private final Traces traces;
    private final CutGauges gauges;

    CutRecords(CutRepository cuts, CutEndRepository ends, TubeSheets tubes, Traces traces, CutGauges gauges) {
        this.cuts = cuts;
        this.ends = ends;
        this.tubes = tubes;
        this.traces = traces;
        this.gauges = gauges;
    }

    /** One cut of an operation. */
    record At(long operationId, UUID actId, Cut cut) {}

    /** Everything recorded at operations, oldest first. */
    List<At> of(Collection<Long> operationIds) {
        List<CutRow> rows = operationIds.isEmpty() ? List.of() : cuts.findByOperationIdInOrderById(operationIds);
        if (rows.isEmpty()) {
            return List.of();
        }
        Map<Long, List<Cut.End>> of = ends
                .findByCutIdInOrderByPlace(rows.stream().map(CutRow::id).toList())
                .stream()
                .collect(Collectors.groupingBy(
                        CutEndRow::cutId, Collectors.mapping(CutEndRow::end, Collectors.toList())));
        return rows.stream()
                .map(row -> new At(row.operationId(), row.actId(), row.cut(of.getOrDefault(row.id(), List.of()))))
                .toList();
    }

    /**
     * The newest of each piece. A tube that was issued to its place later is another one, and not measured
     * yet; nor is, while the operation is at hand, what was read with a gauge that was found wrong since.
     */
    Map<String, Cut> newest(FrameSheet.Head head, long operationId) {
        Map<String, Cut> newest = new LinkedHashMap<>();
        of(List.of(operationId)).forEach(at -> newest.put(at.cut().piece(), at.cut()));
        leaveOutReplaced(head, newest);
        if (Long.valueOf(operationId).equals(head.currentOperationId())) {
            newest.values().retainAll(gauges.standing(newest.values()));
        }
        return newest;
    }

    /**
     * What stood of each piece when that act recorded one; empty where it recorded none. Of a piece whose tube is another one
     * since, nothing is told.
     */
    Map<String, Cut> asOf(FrameSheet.Head head, long operationId, UUID actId) {
        Map<String, Cut> stood = new LinkedHashMap<>();
        for (At at : of(List.of(operationId))) {
            stood.put(at.cut().piece(), at.cut());
            if (at.actId().equals(actId)) {
                leaveOutReplaced(head, stood);
                return stood;
            }
        }
        return Map.of();
    }

    /**
     * Pieces of a frame whose tube is another one than was measured, at whichever operation: it was issued to their place
     * since.
     */
    Set<String> replaced(FrameSheet.Head head) {
        Map<String, Instant> issued = tubes.issuedAt(head.serial(), head.part());
        if (issued.isEmpty()) {
            return Set.of();
        }
        List<Long> operations = traces.operationsOf(head.travellerId());
        Map<String, Instant> measured = new HashMap<>();
        cuts.findByOperationIdInOrderById(operations).forEach(row -> measured.put(row.piece(), row.at()));
        return measured.keySet().stream()
                .filter(piece ->
                        issued.containsKey(piece) && measured.get(piece).isBefore(issued.get(piece)))
                .collect(Collectors.toSet());
    }

    /**
     * Tubes without a place of their own that were scrapped after something of the frame was measured, and for which no tube
     * was measured anew. Each asks for one; which it is, whoever cuts it knows.
     */
    int owed(FrameSheet.Head head) {
        List<Instant> scrapped = tubes.scrappedWithoutPlace(head.serial(), head.part());
        if (scrapped.isEmpty()) {
            return 0;
        }
        Set<String> placed = tubes.issuedAt(head.serial(), head.part()).keySet();
        List<CutRow> measured = cuts.findByOperationIdInOrderById(traces.operationsOf(head.travellerId())).stream()
                .filter(row -> !placed.contains(row.piece()))
                .toList();
        List<CutRow> anew = new ArrayList<>(measured);
        int owed = 0;
        for (Instant at : scrapped) {
            Set<String> before = measured.stream()
                    .filter(row -> row.at().isBefore(at))
                    .map(CutRow::piece)
                    .collect(Collectors.toSet());
            Optional<CutRow> instead = anew.stream()
                    .filter(row -> !row.at().isBefore(at) && before.contains(row.piece()))
                    .findFirst();
            instead.ifPresent(anew::remove);
            owed += before.isEmpty() || instead.isPresent() ? 0 : 1;
        }
        return owed;
    }

    private void leaveOutReplaced(FrameSheet.Head head, Map<String, Cut> cuts) {
        if (!cuts.isEmpty()) {
            tubes.issuedAt(head.serial(), head.part())
                    .forEach((place, issued) -> cuts.computeIfPresent(
                            place, (piece, cut) -> cut.at().isBefore(issued) ? null : cut));
        }
    }

    Optional<Cut.With> lastWith() {
        return cuts.findFirstByOrderByIdDesc()
                .map(row -> row.cut(new ArrayList<>()).with());
    }
}
