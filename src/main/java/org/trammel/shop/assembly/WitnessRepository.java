package org.trammel.shop.assembly;

import java.util.Collection;
import java.util.List;
import org.springframework.data.repository.Repository;

interface WitnessRepository extends Repository<WitnessRow, Long> {

    WitnessRow saveAndFlush(WitnessRow row);

    List<WitnessRow> findByOperationIdOrderById(long operationId);

    List<WitnessRow> findByOperationIdInOrderById(Collection<Long> operationIds);
}
