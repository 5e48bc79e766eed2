package org.trammel.shop.welding;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface PurgeRepository extends Repository<PurgeRow, Long> {

    PurgeRow saveAndFlush(PurgeRow row);

    List<PurgeRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    List<PurgeRow> findByGaugeAndAtGreaterThanEqualOrderById(String gauge, Instant since);

    @Query("select distinct r.by from PurgeRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
