package org.trammel.shop.ovens;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface RunRepository extends Repository<RunRow, Long> {

    RunRow saveAndFlush(RunRow row);

    Optional<RunRow> findById(long id);

    Optional<RunRow> findByCode(String code);

    boolean existsByCode(String code);

    /** As they were opened, newest first, below one; an id that none has is above all. */
    @Query("""
            select r from RunRow r where not exists (select 1 from RunRow b where b.id = :before
            and (b.openedAt < r.openedAt or b.openedAt = r.openedAt and b.id <= r.id))
            order by r.openedAt desc, r.id desc
            """)
    List<RunRow> page(long before, Limit limit);

    List<RunRow> findByIdIn(Collection<Long> ids);

    boolean existsByOvenIdAndState(long ovenId, RunState state);

    @Query("select max(r.stoppedAt) from RunRow r where r.ovenId = :ovenId and r.stoppedAt <= :at")
    Optional<Instant> stoppedBefore(long ovenId, Instant at);

    @Query("select min(r.startedAt) from RunRow r where r.ovenId = :ovenId and r.startedAt >= :at")
    Optional<Instant> startedAfter(long ovenId, Instant at);

    /** Runs that a thermocouple was in while its readings are in doubt, in the order they began. */
    @Query("""
            select r from RunRow r, WiredRow w
            where w.runId = r.id and w.code = :thermocouple and r.startedAt is not null and r.startedAt < :until
            and (r.stoppedAt is null or r.stoppedAt > :since) order by r.startedAt, r.id
            """)
    List<RunRow> withThermocouple(String thermocouple, Instant since, Instant until);

    @Query("select count(r) from RunRow r")
    long all();
}
