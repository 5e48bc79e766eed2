package org.trammel.shop.ovens;

import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

interface FittedRepository extends Repository<FittedRow, Long> {

    FittedRow saveAndFlush(FittedRow row);

    List<FittedRow> findByOvenIdOrderByRemovedAtDescCode(long ovenId);

    List<FittedRow> findByRemovedAtIsNullOrderByCode();

    Optional<FittedRow> findByCodeAndRemovedAtIsNull(String code);
}
