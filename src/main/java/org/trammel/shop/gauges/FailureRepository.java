package org.trammel.shop.gauges;

import java.util.List;
import org.springframework.data.repository.Repository;

interface FailureRepository extends Repository<FailureRow, Long> {

    FailureRow save(FailureRow row);

    List<FailureRow> findByGaugeIdOrderByIdDesc(long gaugeId);
}
