package org.trammel.shop.cuts;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface CutRepository extends Repository<CutRow, Long> {

    CutRow saveAndFlush(CutRow row);

    List<CutRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    boolean existsByOperationId(long operationId);

    /** The newest of all, for the gauges that lie on the bench. */
    Optional<CutRow> findFirstByOrderByIdDesc();

    @Query("select distinct r.by from CutRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
