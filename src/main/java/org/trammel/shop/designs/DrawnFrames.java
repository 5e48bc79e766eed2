package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.geometry.SideView;
import org.trammel.calc.units.Answer;

/** Frames as their drawings compute them, for whoever measures or draws one. */
@Service
public class DrawnFrames {

    private final Designs designs;
    private final FramePage page;

    DrawnFrames(Designs designs, FramePage page) {
        this.designs = designs;
        this.page = page;
    }

    /**
     * A computed frame.
     *
     * @param shellWidth_mm null where the drawing gives none
     * @param axleWidth_mm inside the dropouts; null where the drawing gives none
     */
    public record Drawn(
            SideView side,
            @Nullable Double shellWidth_mm,
            @Nullable Double axleWidth_mm) {}

    /** The frame of a revision; empty where its inputs do not compute one. */
    @Transactional(readOnly = true)
    public Optional<Drawn> of(long revisionId) {
        DesignSheet sheet = designs.revision(revisionId);
        return page.computed(sheet).side() instanceof Answer.Determined<SideView> side
                ? Optional.of(new Drawn(
                        side.value(),
                        figure(sheet.geometry(), GeometryInput.SHELL_WIDTH),
                        figure(sheet.geometry(), GeometryInput.AXLE_WIDTH)))
                : Optional.empty();
    }

    private static @Nullable Double figure(Map<String, String> typed, GeometryInput input) {
        String text = typed.get(input.code());
        return text == null ? null : new BigDecimal(text).doubleValue();
    }
}
