package org.trammel.shop.coats;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface StripRepository extends Repository<StripRow, Long> {

    StripRow saveAndFlush(StripRow row);

    List<StripRow> findByOperationIdOrderById(long operationId);

    List<StripRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("select distinct r.by from StripRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
