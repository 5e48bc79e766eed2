package org.trammel.shop.inspection;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface ColdSetRepository extends JpaRepository<ColdSet, Long> {

    List<ColdSet> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("select distinct s.operationId from ColdSet s where s.at >= :moment")
    Set<Long> operationsSince(Instant moment);

    /** The newest pushes of characteristics of these names on frames of a metal that say how far it was pushed. */
    @Query("""
            select s from ColdSet s
            where s.characteristicName in :names and s.metal = :metal and s.pushMm is not null
            order by s.id desc
            """)
    List<ColdSet> measured(Collection<String> names, String metal, Limit limit);

    /** When a frame was first pushed. */
    record First(long travellerId, Instant at) {}

    @Query("""
            select new org.trammel.shop.inspection.ColdSetRepository$First(s.travellerId, min(s.at))
            from ColdSet s group by s.travellerId
            """)
    List<First> firsts();

    @Query("""
            select new org.trammel.shop.inspection.ColdSetRepository$First(s.travellerId, min(s.at))
            from ColdSet s where s.travellerId in :travellers group by s.travellerId
            """)
    List<First> firstsOf(Collection<Long> travellers);

    @Query("select distinct s.personId from ColdSet s where s.operationId = :operationId")
    Set<Long> peopleAt(long operationId);

    @Query("select distinct s.personId from ColdSet s where s.characteristicId in :characteristicIds")
    Set<Long> peopleOn(Collection<Long> characteristicIds);
}
