package org.trammel.shop.backtraces;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface TracedFrameRepository extends Repository<TracedFrameRow, Long> {

    TracedFrameRow saveAndFlush(TracedFrameRow row);

    Optional<TracedFrameRow> findById(long id);

    List<TracedFrameRow> findByTraceIdOrderByPlaceAscIdAsc(long traceId);

    List<TracedFrameRow> findByRunIdOrderById(long runId);

    Optional<TracedFrameRow> findByTraceIdAndRunIdAndTravellerId(long traceId, long runId, long travellerId);

    /** Words of what the owners of a frame were told, in every trace. */
    @Query("""
            select f.resultWordsId from TracedFrameRow f
            where f.serial = :serial and f.result = org.trammel.shop.backtraces.TraceResult.OWNER_CONTACTED
                  and f.resultWordsId is not null
            """)
    List<Long> toldOf(String serial);
}
