package org.trammel.shop.backtraces;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface TraceDecisionRepository extends Repository<TraceDecisionRow, Long> {

    TraceDecisionRow saveAndFlush(TraceDecisionRow row);

    /** The one that stands, which is the last. */
    Optional<TraceDecisionRow> findFirstByFrameIdOrderByNumberDesc(long frameId);

    List<TraceDecisionRow> findByFrameIdInOrderByNumber(Collection<Long> frameIds);

    /** Words of who of the customer agreed, in every decision ever put forward for a frame. */
    @Query("""
            select d.customerWordsId from TraceDecisionRow d, TracedFrameRow f
            where f.id = d.frameId and f.serial = :serial and d.customerWordsId is not null
            """)
    List<Long> customerWordsOf(String serial);
}
