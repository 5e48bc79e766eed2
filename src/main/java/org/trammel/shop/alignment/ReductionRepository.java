package org.trammel.shop.alignment;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface ReductionRepository extends Repository<ReductionRow, Long> {

    ReductionRow save(ReductionRow row);

    Optional<ReductionRow> findByActId(UUID actId);

    @Query("select distinct r from ReductionRow r left join fetch r.used where r.id in :ids order by r.id")
    List<ReductionRow> withFigures(Collection<Long> ids);

    @Query("select distinct r from ReductionRow r left join fetch r.used where r.sheetId = :sheetId order by r.id")
    List<ReductionRow> ofSheet(long sheetId);
}
