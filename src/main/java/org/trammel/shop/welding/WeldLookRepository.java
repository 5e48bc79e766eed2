package org.trammel.shop.welding;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface WeldLookRepository extends Repository<LookRow, Long> {

    LookRow saveAndFlush(LookRow row);

    Optional<LookRow> findByNonconformance(String number);

    List<LookRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("select distinct r.by from WeldLookRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);

    @Query("select distinct r.by from WeldLookRow r where r.operationId = :operationId"
            + " and not (r.verdict = org.trammel.shop.welding.LookVerdict.UNDECIDED and r.nonconformance is not null)")
    Set<Long> lookersAt(long operationId);
}
