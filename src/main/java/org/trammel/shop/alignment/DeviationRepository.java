package org.trammel.shop.alignment;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface DeviationRepository extends Repository<DeviationRow, Long> {

    DeviationRow save(DeviationRow row);

    @Query("""
            select distinct d from DeviationRow d left join fetch d.budget where d.reductionId in :reductionIds order by d.id
            """)
    List<DeviationRow> ofReductions(Collection<Long> reductionIds);
}
