package org.trammel.shop.drift;

import java.util.Collection;
import java.util.List;
import org.springframework.data.repository.Repository;

interface StrikeRepository extends Repository<StrikeRow, Long> {

    StrikeRow save(StrikeRow row);

    boolean existsByHistoryId(long historyId);

    List<StrikeRow> findByHistoryIdInOrderById(Collection<Long> historyIds);

    List<StrikeRow> findAllByOrderById();
}
