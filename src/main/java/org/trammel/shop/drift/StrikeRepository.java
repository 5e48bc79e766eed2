package org.trammel.shop.drift;

import java.util.List;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface StrikeRepository extends Repository<StrikeRow, Long> {

    StrikeRow save(StrikeRow row);

    boolean existsByHistoryId(long historyId);

    /** A reading and why it was struck out. */
    record Line(HistoryRow history, StrikeRow strike) {}

    /** What was struck out of a series, the newest first. */
    @Query("""
            select new org.trammel.shop.drift.StrikeRepository$Line(h, s) from StrikeRow s, HistoryRow h
            where h.id = s.historyId and h.seriesId = :seriesId order by s.id desc
            """)
    List<Line> of(long seriesId, Limit limit);

    List<StrikeRow> findAllByOrderById();
}
