package org.trammel.shop.coats;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface BlastRepository extends Repository<BlastRow, Long> {

    BlastRow saveAndFlush(BlastRow row);

    List<BlastRow> findByOperationIdOrderById(long operationId);

    List<BlastRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("select distinct r.by from BlastRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);

    boolean existsByLotAndMetal(String lot, String metal);
}
