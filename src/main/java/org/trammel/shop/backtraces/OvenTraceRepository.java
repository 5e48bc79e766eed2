package org.trammel.shop.backtraces;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface OvenTraceRepository extends Repository<OvenTraceRow, Long> {

    OvenTraceRow saveAndFlush(OvenTraceRow row);

    Optional<OvenTraceRow> findById(long id);

    List<OvenTraceRow> findByStateOrderById(OvenTraceState state);

    List<OvenTraceRow> findByIdLessThanOrderByIdDesc(long before, Limit limit);

    /** How many frames of a trace there are, and how many wait for a result. */
    interface Counted {
        long getId();

        long getFrames();

        long getWaiting();
    }

    @Query("""
            select f.traceId as id, count(f) as frames,
                   sum(case when f.result is null and f.outcome in (org.trammel.shop.backtraces.TraceOutcome.CONTACT_OWNER,
                                                                    org.trammel.shop.backtraces.TraceOutcome.HOLD)
                            then 1 else 0 end) as waiting
            from TracedFrameRow f where f.traceId in :ids group by f.traceId
            """)
    List<Counted> framesOf(Collection<Long> ids);
}
