package org.trammel.shop.drift;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

interface BaseRepository extends Repository<BaseRow, Long> {

    BaseRow save(BaseRow row);

    Optional<BaseRow> findFirstBySeriesIdOrderByIdDesc(long seriesId);

    List<BaseRow> findBySeriesIdInOrderById(Collection<Long> seriesIds);
}
