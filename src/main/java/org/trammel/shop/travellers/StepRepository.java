package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface StepRepository extends JpaRepository<Step, Long> {

    List<Step> findByOperationIdOrderByPosition(long operationId);

    List<Step> findByOperationIdInOrderByOperationIdAscPositionAsc(Collection<Long> operationIds);
}
