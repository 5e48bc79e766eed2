package org.trammel.shop.ovens;

import java.util.Optional;
import org.springframework.data.repository.Repository;

interface QuenchRepository extends Repository<QuenchRow, Long> {

    QuenchRow saveAndFlush(QuenchRow row);

    Optional<QuenchRow> findFirstByRunIdOrderByIdDesc(long runId);
}
