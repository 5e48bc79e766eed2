package org.trammel.shop.drift;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface EarlierWelderRepository extends Repository<EarlierWelder, Long> {

    EarlierWelder save(EarlierWelder row);

    @Query("""
            select w from EarlierWelder w, HistoryRow h where h.id = w.historyId and h.seriesId in :seriesIds
            """)
    List<EarlierWelder> of(Collection<Long> seriesIds);

    @Query("select distinct w.wordsId from EarlierWelder w where w.wordsId is not null")
    Set<Long> written();
}
