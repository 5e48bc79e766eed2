package org.trammel.shop.coats;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface AirRepository extends Repository<AirRow, Long> {

    AirRow saveAndFlush(AirRow row);

    List<AirRow> findByOperationIdOrderById(long operationId);

    List<AirRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("select distinct r.by from AirRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
