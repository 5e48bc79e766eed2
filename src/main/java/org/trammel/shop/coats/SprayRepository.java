package org.trammel.shop.coats;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface SprayRepository extends Repository<SprayRow, Long> {

    SprayRow saveAndFlush(SprayRow row);

    List<SprayRow> findByLotOrderById(String lot);

    List<SprayRow> findByOperationIdOrderById(long operationId);

    List<SprayRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("select distinct r.by from SprayRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
