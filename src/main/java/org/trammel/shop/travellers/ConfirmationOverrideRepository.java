package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface ConfirmationOverrideRepository extends JpaRepository<ConfirmationOverride, Long> {

    boolean existsByOperationIdAndPersonIdAndQualification(long operationId, long personId, String qualification);

    List<ConfirmationOverride> findByOperationIdInOrderById(Collection<Long> operations);

    List<ConfirmationOverride> findByPersonIdOrderByIdDesc(long personId);
}
