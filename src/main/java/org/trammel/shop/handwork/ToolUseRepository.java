package org.trammel.shop.handwork;

import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface ToolUseRepository extends Repository<ToolUseRow, Long> {

    ToolUseRow saveAndFlush(ToolUseRow row);

    List<ToolUseRow> findByOperationIdOrderById(long operationId);

    /** Tools by when they were taken last at a station, the newest first. */
    @Query("select r.tool from ToolUseRow r where r.station = :station group by r.tool order by max(r.id) desc")
    List<String> lastAt(String station);

    @Query("select distinct r.by from ToolUseRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
