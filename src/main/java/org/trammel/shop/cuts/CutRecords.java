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

/** Reads what was measured of the tubes of a frame. */
@Component
@Transactional(readOnly = true)
class CutRecords {

    private final CutRepository cuts;
    private final CutEndRepository ends;

    CutRecords(CutRepository cuts, CutEndRepository ends) {
        this.cuts = cuts;
        this.ends = ends;
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

    /** The newest of each piece. */
    Map<String, Cut> newest(long operationId) {
        Map<String, Cut> newest = new LinkedHashMap<>();
        of(List.of(operationId)).forEach(at -> newest.put(at.cut().piece(), at.cut()));
        return newest;
    }

    Optional<Cut.With> lastWith() {
        return cuts.findFirstByOrderByIdDesc()
                .map(row -> row.cut(new ArrayList<>()).with());
    }
}
