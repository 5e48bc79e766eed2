package org.trammel.shop.ovens;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface LoadedRepository extends Repository<LoadedRow, Long> {

    LoadedRow saveAndFlush(LoadedRow row);

    List<LoadedRow> findByRunIdOrderById(long runId);

    List<LoadedRow> findByRunIdInOrderById(Collection<Long> runIds);

    Optional<LoadedRow> findByRunIdAndTravellerId(long runId, long travellerId);

    List<LoadedRow> findByOperationIdOrderById(long operationId);

    List<LoadedRow> findBySerialOrderById(String serial);

    /** Operations that wait for a load. */
    @Query("""
            select f.operationId from LoadedRow f, RunRow r
            where r.code = :code and f.runId = r.id and f.operationId is not null
            """)
    List<Long> operationsOf(String code);

    /** Loads that are not decided in which a frame is. */
    @Query("""
            select r.code from LoadedRow f, RunRow r
            where f.travellerId = :travellerId and r.id = f.runId and f.state = org.trammel.shop.ovens.FrameState.LOADED
            and r.state in (org.trammel.shop.ovens.RunState.LOADING, org.trammel.shop.ovens.RunState.SIGNED,
                            org.trammel.shop.ovens.RunState.RUNNING, org.trammel.shop.ovens.RunState.STOPPED)
            """)
    List<String> openLoadsOf(long travellerId);

    /** When the last run ended that cured a frame and was released, before another began. */
    @Query("""
            select max(r.stoppedAt) from LoadedRow f, RunRow r, ProgrammeRevisionRow p
            where f.travellerId = :travellerId and r.id = f.runId and p.id = r.revisionId and r.stoppedAt <= :before
            and f.state = org.trammel.shop.ovens.FrameState.RELEASED
            and p.programme.purpose = org.trammel.shop.ovens.Purpose.CURE
            """)
    Optional<Instant> curedUntil(long travellerId, Instant before);

    /** Parts of a frame that a run aged which has been decided; empty text for the whole frame. */
    @Query("""
            select f.part from LoadedRow f, RunRow r, ProgrammeRevisionRow p
            where f.serial = :serial and r.id = f.runId and p.id = r.revisionId
            and f.state <> org.trammel.shop.ovens.FrameState.TAKEN_OUT
            and r.state = org.trammel.shop.ovens.RunState.DECIDED
            and p.programme.purpose = org.trammel.shop.ovens.Purpose.AGEING
            """)
    List<String> agedRunsOf(String serial);
}
