package org.trammel.shop.coats;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface LookRepository extends Repository<LookRow, Long> {

    LookRow saveAndFlush(LookRow row);

    List<LookRow> findByOperationIdOrderById(long operationId);

    List<LookRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("select distinct r.by from LookRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
