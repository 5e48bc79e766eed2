package org.trammel.shop.dew;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface DewMarginRepository extends Repository<DewMarginRow, Long> {

    DewMarginRow saveAndFlush(DewMarginRow row);

    List<DewMarginRow> findByOperationIdInAndPurposeOrderById(Collection<Long> operationIds, DewPurpose purpose);

    /** The newest of all: its meters lie on the bench. */
    Optional<DewMarginRow> findFirstByPurposeOrderByIdDesc(DewPurpose purpose);

    @Query("""
            select r from DewMarginRow r
            where (r.airGauge = :gauge or r.metalGauge = :gauge) and r.at >= :since order by r.id
            """)
    List<DewMarginRow> readWith(String gauge, Instant since);

    @Query("select distinct r.by from DewMarginRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
