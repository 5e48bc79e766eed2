package org.trammel.calc.geometry;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A tube as it is cut.
 *
 * <pre>
 * blank = axis length − shortest setback at each end + trim per mitred end
 * </pre>
 *
 * @param tube which
 * @param stock of what
 * @param axisLength_mm between the mates' axes, or to the tube's own end
 * @param endOne its first end
 * @param endTwo its second end
 * @param phase_rad of the second cut against the first, between their φ = 0, clockwise looking from end one along the tube
 * @param blank_mm length to saw, before any end is formed
 * @param forming what comes after forming an end or both, if one is formed
 * @param butts how a butted tube is shortened; none for a plain one
 * @param cautions what to look at first
 */
public record CutPiece(
        FrameTube tube,
        TubeStock stock,
        double axisLength_mm,
        EndCut endOne,
        EndCut endTwo,
        double phase_rad,
        double blank_mm,
        @Nullable Forming forming,
        @Nullable ButtFit butts,
        List<Caution> cautions) {

    public CutPiece {
        cautions = List.copyOf(cautions);
    }

    /**
     * Ends are formed. A formed end sits deeper on its mate than the round one would, so the blank is cut for the round
     * tube and trimmed at that end when it is formed.
     *
     * @param one the oval of the first end; null where it stays round
     * @param two the oval of the second end; null where it stays round
     * @param trimmed_mm length after forming
     */
    public record Forming(@Nullable FormedEnd one, @Nullable FormedEnd two, double trimmed_mm) {}
}
