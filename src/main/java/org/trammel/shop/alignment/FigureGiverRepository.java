package org.trammel.shop.alignment;

import java.util.Collection;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface FigureGiverRepository extends Repository<RawRow, Long> {

    @Query("""
            select distinct f.personId from RawRow f, SheetRow s
            where s.id = f.sheetId and s.operationId = :operationId
            """)
    Set<Long> peopleAt(long operationId);

    @Query("""
            select distinct f.personId from ReductionRow r join r.used u, RawRow f
            where f.id = u and r.id in :reductionIds
            """)
    Set<Long> peopleOf(Collection<Long> reductionIds);
}
