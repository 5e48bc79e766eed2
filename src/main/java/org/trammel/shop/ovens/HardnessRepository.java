package org.trammel.shop.ovens;

import java.util.List;
import org.springframework.data.repository.Repository;

interface HardnessRepository extends Repository<HardnessRow, Long> {

    HardnessRow save(HardnessRow row);

    List<HardnessRow> findByRunIdOrderById(long runId);
}
