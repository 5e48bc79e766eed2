package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.geometry.ArmTubes;
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

    /**
     * A tube that is pushed on.
     *
     * @param tube as a sentence has it
     * @param length_mm from the shell's outside, or that of a swing arm's bosses, to the axle; null where the drawing gives
     *     none
     */
    public record Section(
            String tube,
            BigDecimal outside_mm,
            BigDecimal wall_mm,
            @Nullable BigDecimal length_mm) {}

    /** The chainstay of a revision, as it was entered; empty where outside or wall was not. */
    @Transactional(readOnly = true)
    public Optional<Section> chainstay(long revisionId) {
        DesignSheet sheet = designs.revision(revisionId);
        Map<String, String> typed = sheet.geometry();
        return section(
                "chainstay",
                typed(typed, GeometryInput.CHAINSTAY_OUTSIDE),
                typed(typed, GeometryInput.CHAINSTAY_WALL),
                typed.containsKey(GeometryInput.PIVOT_AHEAD.code())
                        ? armFree_mm(sheet)
                        : free_mm(typed(typed, GeometryInput.CHAINSTAY), typed(typed, GeometryInput.SHELL_OUTSIDE)));
    }

    private @Nullable BigDecimal armFree_mm(DesignSheet sheet) {
        return page.computed(sheet).arm() instanceof Answer.Determined<ArmTubes> arm
                ? free_mm(
                        BigDecimal.valueOf(arm.value().lowerPath().chord().sideLength_mm()),
                        BigDecimal.valueOf(arm.value().mates().bossOutside_mm()))
                : null;
    }

    private static @Nullable BigDecimal free_mm(@Nullable BigDecimal stay, @Nullable BigDecimal mate) {
        return stay == null || mate == null ? stay : stay.subtract(mate.divide(BigDecimal.valueOf(2)));
    }

    /** The down tube of a revision, as it was entered; empty where outside or wall was not. */
    @Transactional(readOnly = true)
    public Optional<Section> downTube(long revisionId) {
        Map<String, String> typed = designs.revision(revisionId).geometry();
        return section(
                "down tube",
                typed(typed, GeometryInput.DOWN_TUBE_OUTSIDE),
                typed(typed, GeometryInput.DOWN_TUBE_WALL),
                null);
    }

    private static Optional<Section> section(
            String tube, @Nullable BigDecimal outside, @Nullable BigDecimal wall, @Nullable BigDecimal length) {
        return outside == null || wall == null
                ? Optional.empty()
                : Optional.of(new Section(tube, outside, wall, length));
    }

    private static @Nullable BigDecimal typed(Map<String, String> typed, GeometryInput input) {
        String text = typed.get(input.code());
        return text == null ? null : new BigDecimal(text);
    }

    private static @Nullable Double figure(Map<String, String> typed, GeometryInput input) {
        String text = typed.get(input.code());
        return text == null ? null : new BigDecimal(text).doubleValue();
    }
}
