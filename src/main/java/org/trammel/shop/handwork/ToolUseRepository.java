package org.trammel.shop.handwork;

import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface ToolUseRepository extends Repository<ToolUseRow, Long> {

    ToolUseRow saveAndFlush(ToolUseRow row);

    List<ToolUseRow> findByOperationIdOrderById(long operationId);

    @Query("select distinct r.by from ToolUseRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
