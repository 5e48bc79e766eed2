package org.trammel.shop.handwork;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface MisreadRepository extends Repository<MisreadRow, Long> {

    MisreadRow saveAndFlush(MisreadRow row);

    Optional<MisreadRow> findByActId(UUID actId);

    List<MisreadRow> findByOperationIdOrderById(long operationId);

    List<MisreadRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("select distinct r.by from MisreadRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
