package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.geometry.SideView;
import org.trammel.calc.units.Answer;

/** Views of a frame for sheets outside the drawing office. */
@Service
public class SideViews {

    private final DesignRevisionRepository revisions;

    SideViews(DesignRevisionRepository revisions) {
        this.revisions = revisions;
    }

    /** The frame from its drive side; empty where it cannot be computed from the revision's inputs. */
    @Transactional(readOnly = true)
    public Optional<SideView> of(long revisionId) {
        Map<String, String> typed = new HashMap<>();
        for (Object[] row : revisions.inputs(List.of(revisionId))) {
            typed.put(((GeometryInput) row[1]).code(), ((BigDecimal) row[2]).toPlainString());
        }
        return ComputedFrame.side(typed) instanceof Answer.Determined<SideView> there
                ? Optional.of(there.value())
                : Optional.empty();
    }
}
