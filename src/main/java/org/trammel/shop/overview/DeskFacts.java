package org.trammel.shop.overview;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.backtraces.OvenTrace;
import org.trammel.shop.inspection.RejudgementLine;
import org.trammel.shop.nonconformance.NonconformanceLine;
import org.trammel.shop.travellers.Travellers;

/**
 * What waits for the QA lead, each list with what expires first on top.
 *
 * @param backupAt when the last back-up was taken; null if none was
 * @param checkpointAt newest checkpoint that ties the log's chains; null if there is none
 */
record DeskFacts(
        List<WindowOpen> windows,
        List<HeldFrame> holds,
        List<NonconformanceLine> nonconformances,
        List<PointToSign> points,
        List<UndecidedReading> undecided,
        List<Travellers.CallLine> calls,
        List<RejudgementLine> rejudgements,
        List<OvenTrace> ovenTraces,
        List<Due> due,
        @Nullable Instant backupAt,
        @Nullable Instant checkpointAt) {

    /**
     * A window that runs, or ran out on a frame that has not gone on.
     *
     * @param gate what must begin before it closes
     */
    public record WindowOpen(String serial, String part, String name, String gate, Instant endsAt, boolean closed) {}

    /**
     * An open hold.
     *
     * @param lifters who lifts it
     * @param byNonconformance it is lifted by deciding one
     * @param resultAt address of the sheet whose result lifts it; null if none does
     * @param operationId operation at hand that may be freed; null if none may
     */
    public record HeldFrame(
            long holdId,
            String serial,
            String reason,
            String words,
            String source,
            String who,
            Instant since,
            String lifters,
            boolean byNonconformance,
            @Nullable String resultAt,
            @Nullable Long operationId,
            String operation) {}

    /** A point that waits to be signed; mine if the reader may sign it as QA lead. */
    public record PointToSign(
            long operationId,
            String serial,
            String part,
            String code,
            String name,
            @Nullable Instant since,
            String missing,
            boolean mine) {}

    /** A characteristic that is undecided. */
    public record UndecidedReading(String serial, String part, String code, String name, String operation) {}

    /**
     * Something with a last day.
     *
     * @param on last day; null if it waits without one
     */
    public record Due(
            String what, String why, String kind, @Nullable LocalDate on, String path) {}

    /** How many things want a word of the QA lead. */
    public int waiting() {
        return nonconformances.size()
                + points.size()
                + undecided.size()
                + calls.size()
                + holds.size()
                + rejudgements.size()
                + ovenTraces.size();
    }
}
