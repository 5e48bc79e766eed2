package org.trammel.shop.ovens;

import java.util.Optional;
import org.springframework.data.repository.Repository;

interface LogRepository extends Repository<LogRow, Long> {

    LogRow save(LogRow row);

    Optional<LogRow> findFirstByRunIdOrderByIdDesc(long runId);
}
