package org.trammel.shop.ovens;

import java.util.List;
import org.springframework.data.repository.Repository;

interface DoorRepository extends Repository<DoorRow, Long> {

    DoorRow save(DoorRow row);

    List<DoorRow> findByRunIdOrderByIdAsc(long runId);
}
