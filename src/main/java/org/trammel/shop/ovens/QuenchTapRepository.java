package org.trammel.shop.ovens;

import java.util.Optional;
import org.springframework.data.repository.Repository;

interface QuenchTapRepository extends Repository<QuenchTapRow, Long> {

    QuenchTapRow saveAndFlush(QuenchTapRow row);

    Optional<QuenchTapRow> findFirstByRunIdOrderByIdDesc(long runId);
}
