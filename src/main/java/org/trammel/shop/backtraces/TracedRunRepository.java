package org.trammel.shop.backtraces;

import java.util.Collection;
import java.util.List;
import org.springframework.data.repository.Repository;

/** Of several rows of a run the last one counts. */
interface TracedRunRepository extends Repository<TracedRunRow, Long> {

    TracedRunRow save(TracedRunRow row);

    List<TracedRunRow> findByTraceIdOrderById(long traceId);

    List<TracedRunRow> findByRunIdOrderById(long runId);

    List<TracedRunRow> findByRunIdInOrderById(Collection<Long> runIds);
}
