package org.trammel.shop.assembly;

import java.util.List;
import org.springframework.data.repository.Repository;

interface AgainRepository extends Repository<AgainRow, Long> {

    AgainRow saveAndFlush(AgainRow row);

    List<AgainRow> findByOperationIdOrderById(long operationId);
}
