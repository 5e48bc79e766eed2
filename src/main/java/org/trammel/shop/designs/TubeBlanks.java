package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.geometry.CutList;
import org.trammel.calc.geometry.WallProfile;
import org.trammel.calc.units.Answer;

/** The tubes of several designs as they are sawn, read at once and computed anew. */
@Service
public class TubeBlanks {

    private final DesignRevisionRepository revisions;
    private final SawDrawer saws;

    TubeBlanks(DesignRevisionRepository revisions, SawDrawer saws) {
        this.revisions = revisions;
        this.saws = saws;
    }

    /** Of every revision whose cut list can be computed; the others are missing. */
    @Transactional(readOnly = true)
    public List<TubeBlank> of(Collection<Long> revisionIds) {
        if (revisionIds.isEmpty()) {
            return List.of();
        }
        Map<Long, Map<String, String>> inputs = new TreeMap<>();
        for (Object[] row : revisions.inputs(revisionIds)) {
            inputs.computeIfAbsent((Long) row[0], id -> new TreeMap<>())
                    .put(
                            ((GeometryInput) row[1]).code(),
                            Nominal.plain((BigDecimal) row[2]).toPlainString());
        }
        List<TubeBlank> blanks = new ArrayList<>();
        inputs.forEach((id, typed) -> {
            if (ComputedFrame.of(typed, saws.rules(id)).cuts() instanceof Answer.Determined<CutList> list) {
                list.value()
                        .pieces()
                        .forEach(piece -> blanks.add(new TubeBlank(
                                id,
                                piece.tube().word(),
                                piece.tube().count(),
                                piece.stock().outside_mm(),
                                piece.stock().profile().wallAtOne_mm(),
                                piece.blank_mm(),
                                piece.stock().profile() instanceof WallProfile.Butted)));
            }
        });
        return blanks;
    }
}
