package org.trammel.shop.welding;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface NodeDoneRepository extends Repository<NodeDoneRow, Long> {

    NodeDoneRow saveAndFlush(NodeDoneRow row);

    Optional<NodeDoneRow> findByNonconformance(String number);

    List<NodeDoneRow> findByOpenedIdOrderByNumber(long openedId);

    List<NodeDoneRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    List<NodeDoneRow> findByGaugeAndAtGreaterThanEqualOrderById(String gauge, Instant since);

    @Query("select distinct r.by from NodeDoneRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
