package org.trammel.shop.assembly;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface InsertionRepository extends Repository<InsertionRow, Long> {

    InsertionRow saveAndFlush(InsertionRow row);

    List<InsertionRow> findByOperationIdOrderById(long operationId);

    List<InsertionRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("select distinct r.by from InsertionRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
