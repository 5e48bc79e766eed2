package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;

interface ConsignmentRepository extends JpaRepository<Consignment, Long> {

    Optional<Consignment> findByOperationIdAndBackAtIsNull(long operationId);

    boolean existsByOperationIdAndBackAtIsNotNull(long operationId);

    List<Consignment> findByOperationIdIn(Collection<Long> operationIds);
}
