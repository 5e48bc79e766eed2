package org.trammel.shop.overview;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.assembly.BuildRecord;
import org.trammel.shop.assembly.FramePart;
import org.trammel.shop.assembly.OwnPartChecks;
import org.trammel.shop.assembly.TorqueSheet;
import org.trammel.shop.materials.MadeOf;
import org.trammel.shop.travellers.FrameSheet;

/**
 * How one bicycle was built, on paper: what it is made of, who joined it, what was measured last, every torque, how it was
 * ridden, and what its record lacks.
 *
 * @param pieces the frame and its parts in force
 * @param made pieces of lots that it is made of, without what was scrapped
 * @param joined where it was welded or brazed, and by whom
 * @param measured the last reading of everything that is told of a finished bicycle: alignment, fit, mass, run-out, film
 * @param builds what was recorded where it was joined, ridden and packed
 * @param riders names of those who rode it; none on the customer's copy
 * @param missing what the record lacks; empty where it is whole
 * @param named whether people are named on it
 */
record BuildPaper(
        FrameSheet.Head head,
        @Nullable String designLetter,
        List<FrameSheet.Head> pieces,
        List<MadeOf> made,
        List<Joined> joined,
        List<Story.HeatOf> heats,
        List<Measured> measured,
        List<FramePart> components,
        List<OwnPartChecks.Line> ownParts,
        List<Torqued> torques,
        List<BuildRecord> builds,
        Map<Long, String> riders,
        List<Story.Found> found,
        List<String> missing,
        boolean named) {

    /** Nodes of an operation, who welded them, and how many were welded again. */
    public record Joined(
            String operation,
            int nodes,
            int again,
            List<String> by,
            @Nullable Instant last) {}

    /** @param limits in words; empty where it has none */
    public record Measured(
            String mark,
            String name,
            String value,
            String limits,
            String verdict,
            String kind,
            String gauge,
            LocalDate on) {}

    /** @param operation where it was torqued */
    public record Torqued(String operation, TorqueSheet.Line line, String by, String witness) {}
}
