package org.trammel.shop.drift;

import java.util.Collection;
import java.util.List;
import org.springframework.data.repository.Repository;

interface HistoryRepository extends Repository<HistoryRow, Long> {

    HistoryRow save(HistoryRow row);

    List<HistoryRow> findBySeriesIdInOrderByReadAtAscIdAsc(Collection<Long> seriesIds);
}
