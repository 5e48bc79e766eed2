package org.trammel.shop.assembly;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface BeddingRepository extends Repository<BeddingRow, Long> {

    BeddingRow saveAndFlush(BeddingRow row);

    List<BeddingRow> findByOperationIdOrderById(long operationId);

    List<BeddingRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("select distinct r.by from BeddingRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
