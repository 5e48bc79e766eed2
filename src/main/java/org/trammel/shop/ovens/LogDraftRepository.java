package org.trammel.shop.ovens;

import java.util.Optional;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface LogDraftRepository extends Repository<LogDraftRow, Long> {

    LogDraftRow saveAndFlush(LogDraftRow row);

    Optional<LogDraftRow> findByRunId(long runId);

    @Modifying
    @Query("delete from LogDraftRow d where d.runId = :runId")
    int drop(long runId);
}
