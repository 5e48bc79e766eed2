package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface SignatureRepository extends JpaRepository<Signature, Long> {

    List<Signature> findByOperationIdOrderById(long operationId);

    List<Signature> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("select distinct s.personId from Signature s where s.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
