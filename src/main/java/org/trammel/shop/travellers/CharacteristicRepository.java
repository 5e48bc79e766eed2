package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface CharacteristicRepository extends JpaRepository<Characteristic, Long> {

    List<Characteristic> findByOperationIdOrderByPosition(long operationId);

    List<Characteristic> findByOperationIdInOrderByOperationIdAscPositionAsc(Collection<Long> operationIds);

    @Query(
            "select distinct c.operationId from Characteristic c where c.operationId in :ids and lower(c.name) in :names")
    Set<Long> measuring(Collection<Long> ids, Collection<String> names);

    @Query("""
            select c.readingId from Characteristic c, Operation o, Traveller t
            where c.readingId in :readingIds and o.id = c.operationId and t.id = o.travellerId
              and o.state <> org.trammel.shop.travellers.OperationState.REPEATED
              and t.state not in ('SCRAPPED', 'WITHDRAWN')
            """)
    List<Long> inForce(Collection<Long> readingIds);

    @Query("""
            select c from Characteristic c
            where c.id in :ids and c.secondPerson = true and c.readingId is not null
              and c.state = org.trammel.shop.travellers.CharacteristicState.CONFORMING
            """)
    List<Characteristic> readByTwo(Collection<Long> ids);

    @Query(
            "select new org.trammel.shop.travellers.Traces$ReducedBy(c.id, c.reduction) from Characteristic c where c.id in :ids")
    List<Traces.ReducedBy> reductions(Collection<Long> ids);
}
