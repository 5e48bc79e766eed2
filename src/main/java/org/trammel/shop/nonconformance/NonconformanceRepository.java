package org.trammel.shop.nonconformance;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface NonconformanceRepository extends JpaRepository<Nonconformance, Long> {

    List<Nonconformance> findByStateInOrderByOpenedAtAscIdAsc(Collection<NonconformanceState> states);

    List<Nonconformance> findBySerialOrderById(String serial);

    List<Nonconformance> findByIdLessThanOrderByIdDesc(long before, Limit limit);

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
