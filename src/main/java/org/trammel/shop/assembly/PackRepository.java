package org.trammel.shop.assembly;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface PackRepository extends Repository<PackRow, Long> {

    PackRow saveAndFlush(PackRow row);

    List<PackRow> findByOperationIdOrderById(long operationId);

    List<PackRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("select distinct r.by from PackRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
