package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;
import org.trammel.shop.routes.Proof;

interface StepRepository extends JpaRepository<Step, Long> {

    List<Step> findByOperationIdOrderByPosition(long operationId);

    /** A step of an operation with what it belongs to. */
    record InItsPlace(Step step, Operation operation, Traveller traveller) {}

    /** All steps of the operation a step belongs to, by position; one statement for what every tick asks. */
    @Query("""
            select new org.trammel.shop.travellers.StepRepository$InItsPlace(s, o, t)
            from Step one, Step s, Operation o, Traveller t
            where one.id = :stepId and s.operationId = one.operationId and o.id = one.operationId
              and t.id = o.travellerId
            order by s.position
            """)
    List<InItsPlace> besides(long stepId);

    /** The step of a traveller that was ticked last. */
    @Query("""
            select s from Step s, Operation o
            where o.travellerId = :travellerId and s.operationId = o.id and s.ticked = true
            order by s.tickedAt desc, o.position desc, s.position desc
            """)
    List<Step> lastTicked(long travellerId, Limit limit);

    @Query(
            "select distinct s.proof from Step s where s.operationId = :operationId and s.ticked = true and s.proof is not null")
    Set<Proof> provenAt(long operationId);

    List<Step> findByOperationIdInOrderByOperationIdAscPositionAsc(Collection<Long> operationIds);
}
