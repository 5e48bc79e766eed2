package org.trammel.shop.designs;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface GateEntryRepository extends JpaRepository<GateEntry, Long> {

    /** With the figures each was answered on. */
    @Query("select distinct e from GateEntry e left join fetch e.figures where e.revisionId = :revisionId")
    List<GateEntry> findByRevisionId(long revisionId);

    Optional<GateEntry> findByRevisionIdAndCheck(long revisionId, GateCheck check);
}
