package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface PhotoRepository extends JpaRepository<Photo, Long> {

    List<Photo> findByTravellerIdInOrderById(Collection<Long> travellerIds);

    boolean existsByStepId(long stepId);
}
