package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface TickRepository extends JpaRepository<Tick, Long> {

    List<Tick> findByOperationIdOrderById(long operationId);

    List<Tick> findByOperationIdInOrderById(Collection<Long> operationIds);

    Optional<Tick> findFirstByStepIdOrderByIdDesc(long stepId);

    /** Whoever ticked, also where it was taken back since; who took a tick back did none of the work by that. */
    @Query("select distinct t.personId from Tick t where t.operationId in :operationIds and t.untick = false")
    Set<Long> peopleAt(Collection<Long> operationIds);

    /** The same but for the steps that a second person ticks, which are no work of the operation. */
    @Query("""
            select distinct t.personId from Tick t, Step s
            where t.operationId in :operationIds and t.untick = false and s.id = t.stepId and s.secondPerson = false
            """)
    Set<Long> workersAt(Collection<Long> operationIds);
}
