package org.trammel.shop.assembly;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface TorqueRepository extends Repository<TorqueRow, Long> {

    TorqueRow saveAndFlush(TorqueRow row);

    List<TorqueRow> findByOperationIdOrderById(long operationId);

    List<TorqueRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    List<TorqueRow> findByPartIdOrderById(long partId);

    @Query(
            "select distinct r.operationId from TorqueRow r where r.gauge = :gauge and r.at >= :since order by r.operationId")
    List<Long> operationsWith(String gauge, Instant since);

    @Query("select distinct r.by from TorqueRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
