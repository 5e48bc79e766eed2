package org.trammel.shop.drift;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

interface SeriesRepository extends Repository<SeriesRow, Long> {

    SeriesRow save(SeriesRow row);

    List<SeriesRow> findAllByOrderByJigCodeAscCharacteristicCodeAsc();

    Optional<SeriesRow> findById(long id);

    Optional<SeriesRow> findByActId(UUID actId);

    Optional<SeriesRow> findByJigCodeAndCharacteristicCode(String jigCode, String characteristicCode);
}
