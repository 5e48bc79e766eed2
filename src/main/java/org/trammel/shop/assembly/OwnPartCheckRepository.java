package org.trammel.shop.assembly;

import java.util.List;
import org.springframework.data.repository.Repository;

interface OwnPartCheckRepository extends Repository<OwnPartCheckRow, Long> {

    OwnPartCheckRow saveAndFlush(OwnPartCheckRow row);

    List<OwnPartCheckRow> findByOrderIdOrderById(long orderId);
}
