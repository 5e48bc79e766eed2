package org.trammel.shop.drift;

import java.util.Collection;
import java.util.List;
import org.springframework.data.repository.Repository;

interface BaseRepository extends Repository<BaseRow, Long> {

    BaseRow save(BaseRow row);

    List<BaseRow> findBySeriesIdInOrderById(Collection<Long> seriesIds);
}
