package org.trammel.shop.records;

import java.util.List;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;

interface LogEntryRepository extends JpaRepository<LogEntry, Long> {

    List<LogEntry> findByActId(UUID actId);

    List<LogEntry> findByActIdOrderByPlace(UUID actId);

    List<LogEntry> findByChainOrderByPosition(String chain);

    List<LogEntry> findByChainAndPositionLessThanOrderByPositionDesc(String chain, long before, Limit limit);
}
