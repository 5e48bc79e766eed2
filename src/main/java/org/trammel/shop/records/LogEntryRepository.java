package org.trammel.shop.records;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface LogEntryRepository extends JpaRepository<LogEntry, Long> {

    List<LogEntry> findByActId(UUID actId);

    List<LogEntry> findByActIdOrderByPlace(UUID actId);

    @Query("select max(e.at) from LogEntry e")
    Optional<Instant> latest();

    List<LogEntry> findByChainOrderByPosition(String chain);

    List<LogEntry> findByChainAndPositionLessThanOrderByPositionDesc(String chain, long before, Limit limit);
}
