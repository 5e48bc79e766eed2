package org.trammel.shop.welding;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface WeldLookRepository extends Repository<LookRow, Long> {

    LookRow saveAndFlush(LookRow row);

    List<LookRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("select distinct r.by from WeldLookRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
