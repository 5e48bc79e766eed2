package org.trammel.shop.coats;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface LineRepository extends Repository<LineRow, Long> {

    LineRow saveAndFlush(LineRow row);

    List<LineRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("select distinct r.by from LineRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
