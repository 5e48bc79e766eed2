package org.trammel.shop.handwork;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface MetalAirRepository extends Repository<MetalAirRow, Long> {

    MetalAirRow saveAndFlush(MetalAirRow row);

    List<MetalAirRow> findByOperationIdOrderById(long operationId);

    Optional<MetalAirRow> findFirstByOrderByIdDesc();

    List<MetalAirRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("""
            select r from MetalAirRow r
            where (r.airGauge = :gauge or r.metalGauge = :gauge) and r.at >= :since order by r.id
            """)
    List<MetalAirRow> readWith(String gauge, Instant since);

    @Query("select distinct r.by from MetalAirRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
