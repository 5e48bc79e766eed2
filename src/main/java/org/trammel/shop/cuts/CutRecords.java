package org.trammel.shop.cuts;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.materials.TubeSheets;
import org.trammel.shop.travellers.FrameSheet;

/** Reads what was measured of the tubes of a frame. */
@Component
@Transactional(readOnly = true)
class CutRecords {

    private final CutRepository cuts;
    private final CutEndRepository ends;
    private final TubeSheets tubes;

    CutRecords(CutRepository cuts, CutEndRepository ends, TubeSheets tubes) {
        this.cuts = cuts;
        this.ends = ends;
        this.tubes = tubes;
    }

    /** One cut of an operation. */
    record At(long operationId, Cut cut) {}

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
                .map(row -> new At(row.operationId(), row.cut(of.getOrDefault(row.id(), List.of()))))
                .toList();
    }

    /** The newest of each piece. A tube that was issued to its place later is another one, and not measured yet. */
    Map<String, Cut> newest(FrameSheet.Head head, long operationId) {
        Map<String, Cut> newest = new LinkedHashMap<>();
        of(List.of(operationId)).forEach(at -> newest.put(at.cut().piece(), at.cut()));
        if (!newest.isEmpty()) {
            tubes.issuedAt(head.serial(), head.part())
                    .forEach((place, issued) -> newest.computeIfPresent(
                            place, (piece, cut) -> cut.at().isBefore(issued) ? null : cut));
        }
        return newest;
    }

    Optional<Cut.With> lastWith() {
        return cuts.findFirstByOrderByIdDesc()
                .map(row -> row.cut(new ArrayList<>()).with());
    }
}
