package org.trammel.shop.assembly;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface RideRepository extends Repository<RideRow, Long> {

    RideRow saveAndFlush(RideRow row);

    List<RideRow> findByOperationIdOrderById(long operationId);

    List<RideRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("select distinct r.by from RideRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
