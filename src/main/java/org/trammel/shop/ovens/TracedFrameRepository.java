package org.trammel.shop.ovens;

import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

interface TracedFrameRepository extends Repository<TracedFrameRow, Long> {

    TracedFrameRow saveAndFlush(TracedFrameRow row);

    Optional<TracedFrameRow> findById(long id);

    List<TracedFrameRow> findByTraceIdOrderByPlaceAscIdAsc(long traceId);

    List<TracedFrameRow> findByRunIdOrderById(long runId);

    Optional<TracedFrameRow> findByTraceIdAndRunIdAndTravellerId(long traceId, long runId, long travellerId);
}
