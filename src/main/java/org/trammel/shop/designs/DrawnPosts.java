package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.geometry.SaddleFit;
import org.trammel.calc.units.Answer;

/** Tells how much of a seatpost the drawing leaves inside the seat tube. */
@Service
public class DrawnPosts {

    private final DesignRevisionRepository revisions;
    private final SawDrawer saws;

    DrawnPosts(DesignRevisionRepository revisions, SawDrawer saws) {
        this.revisions = revisions;
        this.saws = saws;
    }

    /** Its length less what stands out at the saddle's height; rounded down, and empty where the drawing does not tell both. */
    @Transactional(readOnly = true)
    public Optional<BigDecimal> inside_mm(long revisionId) {
        return revisions
                .whole(revisionId)
                .map(DesignRevision::sheet)
                .flatMap(sheet ->
                        inside_mm(new GivenInputs(sheet.geometry()), ComputedFrame.of(sheet.geometry(), saws.rules())));
    }

    static Optional<BigDecimal> inside_mm(GivenInputs in, ComputedFrame frame) {
        Answer<SaddleFit> fit = frame.geometry().then(new FitInputs(in)::saddle);
        return in.has(GeometryInput.SEATPOST) && fit instanceof Answer.Determined<SaddleFit> there
                ? Optional.of(BigDecimal.valueOf(in.number(GeometryInput.SEATPOST)
                                - there.value().out_mm())
                        .setScale(1, RoundingMode.FLOOR))
                : Optional.empty();
    }
}
