package org.trammel.shop.drift;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

interface HistoryRepository extends Repository<HistoryRow, Long> {

    HistoryRow save(HistoryRow row);

    Optional<HistoryRow> findById(long id);

    List<HistoryRow> findBySeriesIdInOrderByReadAtAscIdAsc(Collection<Long> seriesIds);
}
