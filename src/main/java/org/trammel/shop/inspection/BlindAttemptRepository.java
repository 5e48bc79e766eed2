package org.trammel.shop.inspection;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

interface BlindAttemptRepository extends Repository<BlindAttempt, Long> {

    BlindAttempt saveAndFlush(BlindAttempt row);

    Optional<BlindAttempt> findByActId(UUID actId);

    List<BlindAttempt> findByOperationIdInOrderById(Collection<Long> operationIds);
}
