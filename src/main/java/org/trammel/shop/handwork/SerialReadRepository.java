package org.trammel.shop.handwork;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface SerialReadRepository extends Repository<SerialReadRow, Long> {

    SerialReadRow saveAndFlush(SerialReadRow row);

    List<SerialReadRow> findByOperationIdOrderById(long operationId);

    List<SerialReadRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    boolean existsByOperationIdAndStrikeTickId(long operationId, long strikeTickId);

    @Query("select distinct r.by from SerialReadRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
