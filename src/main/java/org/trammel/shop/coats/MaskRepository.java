package org.trammel.shop.coats;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface MaskRepository extends Repository<MaskRow, Long> {

    MaskRow saveAndFlush(MaskRow row);

    List<MaskRow> findByOperationIdOrderById(long operationId);

    List<MaskRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("select distinct r.by from MaskRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
