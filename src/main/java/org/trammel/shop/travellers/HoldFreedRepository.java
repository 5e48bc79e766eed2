package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface HoldFreedRepository extends JpaRepository<HoldFreed, Long> {

    List<HoldFreed> findByHoldIdInAndOperationId(Collection<Long> holdIds, long operationId);
}
