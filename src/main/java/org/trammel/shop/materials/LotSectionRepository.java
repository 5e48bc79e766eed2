package org.trammel.shop.materials;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface LotSectionRepository extends Repository<LotSectionRow, Long> {

    LotSectionRow save(LotSectionRow row);

    /** The newest statement of each lot. */
    @Query("""
            select s from LotSectionRow s where s.lotId in :lots and s.statement = (
                select max(n.statement) from LotSectionRow n where n.lotId = s.lotId)
            order by s.id
            """)
    List<LotSectionRow> newest(Collection<Long> lots);

    List<LotSectionRow> findByLotIdOrderByStatementDescIdAsc(long lotId);
}
