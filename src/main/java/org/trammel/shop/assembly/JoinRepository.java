package org.trammel.shop.assembly;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface JoinRepository extends Repository<JoinRow, Long> {

    JoinRow saveAndFlush(JoinRow row);

    List<JoinRow> findByOperationIdOrderById(long operationId);

    List<JoinRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("select distinct r.by from JoinRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
