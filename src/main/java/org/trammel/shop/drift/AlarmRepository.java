package org.trammel.shop.drift;

import java.util.List;
import org.springframework.data.repository.Repository;

interface AlarmRepository extends Repository<AlarmRow, Long> {

    AlarmRow save(AlarmRow row);

    List<AlarmRow> findByBaseIdOrderById(long baseId);
}
