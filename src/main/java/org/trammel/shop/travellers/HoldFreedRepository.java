package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface HoldFreedRepository extends JpaRepository<HoldFreed, Long> {

    boolean existsByHoldIdAndOperationId(long holdId, long operationId);

    List<HoldFreed> findByHoldIdInAndOperationId(Collection<Long> holdIds, long operationId);
}
