package org.trammel.shop.drift;

import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface JigFrameRepository extends Repository<JigUseRow, Long> {

    @Query("""
            select u.travellerId from JigUseRow u
            where u.jigCode = :jigCode
              and not exists (select 1 from JigUseRow n where n.travellerId = u.travellerId and n.id > u.id)
            """)
    Set<Long> lastIn(String jigCode);
}
