package org.trammel.shop.nonconformance;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface NonconformanceRepository extends JpaRepository<Nonconformance, Long> {

    List<Nonconformance> findByStateInOrderByOpenedAtAscIdAsc(Collection<NonconformanceState> states);

    List<Nonconformance> findBySerialOrderById(String serial);

    List<Nonconformance> findByIdLessThanOrderByIdDesc(long before, Limit limit);

    /** What is counted of one. */
    record Counted(
            long operationId,
            @Nullable Decision decision,
            @Nullable Instant decidedAt,
            @Nullable BigDecimal hours) {}

    @Query("""
            select new org.trammel.shop.nonconformance.NonconformanceRepository$Counted(n.operationId, n.decision,
                n.decidedAt, n.hours)
            from Nonconformance n where n.openedAt >= :moment order by n.id
            """)
    List<Counted> foundSince(Instant moment);

    @Query("select n.serial from Nonconformance n where n.id = :id")
    Optional<String> serialOf(long id);

    @Query("""
            select n from Nonconformance n
            where n.characteristicId = :characteristicId
              and n.state in (org.trammel.shop.nonconformance.NonconformanceState.OPEN,
                              org.trammel.shop.nonconformance.NonconformanceState.PROPOSED)
            """)
    List<Nonconformance> undecidedOn(long characteristicId);
}
