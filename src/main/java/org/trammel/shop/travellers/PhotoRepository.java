package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface PhotoRepository extends JpaRepository<Photo, Long> {

    List<Photo> findByTravellerIdInOrderById(Collection<Long> travellerIds);

    @Query("select distinct p.stepId from Photo p where p.operationId = :operationId and p.stepId is not null")
    Set<Long> stepsAt(long operationId);

    List<Photo> findByOperationIdOrderById(long operationId);

    boolean existsByStepId(long stepId);
}
