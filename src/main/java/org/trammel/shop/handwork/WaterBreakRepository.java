package org.trammel.shop.handwork;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface WaterBreakRepository extends Repository<WaterBreakRow, Long> {

    WaterBreakRow saveAndFlush(WaterBreakRow row);

    List<WaterBreakRow> findByOperationIdOrderById(long operationId);

    List<WaterBreakRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("select distinct r.by from WaterBreakRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
