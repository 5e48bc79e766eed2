package org.trammel.shop.designs;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;

interface GateEntryRepository extends JpaRepository<GateEntry, Long> {

    List<GateEntry> findByRevisionId(long revisionId);

    Optional<GateEntry> findByRevisionIdAndCheck(long revisionId, GateCheck check);
}
