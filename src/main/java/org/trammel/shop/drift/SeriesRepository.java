package org.trammel.shop.drift;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

interface SeriesRepository extends Repository<SeriesRow, Long> {

    SeriesRow save(SeriesRow row);

    List<SeriesRow> findAllByOrderByFollowedAscJigCodeAscSubjectAscCharacteristicCodeAsc();

    List<SeriesRow> findByCharacteristicCodeInOrderById(Collection<String> codes);

    Optional<SeriesRow> findById(long id);

    Optional<SeriesRow> findByActId(UUID actId);
}
