package org.trammel.shop.welding;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface NodeOpenedRepository extends Repository<NodeOpenedRow, Long> {

    NodeOpenedRow saveAndFlush(NodeOpenedRow row);

    List<NodeOpenedRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    List<NodeOpenedRow> findByGaugeAndAtGreaterThanEqualOrderById(String gauge, Instant since);

    @Query("select distinct r.by from NodeOpenedRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
