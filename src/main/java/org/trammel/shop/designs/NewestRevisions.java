package org.trammel.shop.designs;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface NewestRevisions extends Repository<DesignRevision, Long> {

    @Query("""
            select r from DesignRevision r join fetch r.design d
            where d.id in :designs and r.position =
              (select max(n.position) from DesignRevision n where n.design.id = d.id)
            """)
    List<DesignRevision> of(Collection<Long> designs);
}
