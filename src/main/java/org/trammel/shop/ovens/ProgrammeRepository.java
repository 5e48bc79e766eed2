package org.trammel.shop.ovens;

import java.util.Optional;
import org.springframework.data.repository.Repository;

interface ProgrammeRepository extends Repository<ProgrammeRow, Long> {

    ProgrammeRow saveAndFlush(ProgrammeRow row);

    Optional<ProgrammeRow> findByCode(String code);
}
