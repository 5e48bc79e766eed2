package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface SignatureRepository extends JpaRepository<Signature, Long> {

    List<Signature> findByOperationIdOrderById(long operationId);

    List<Signature> findByOperationIdInOrderById(Collection<Long> operationIds);
}
