package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface OperationRepository extends JpaRepository<Operation, Long> {

    List<Operation> findByTravellerIdOrderByPosition(long travellerId);

    List<Operation> findByStateOrderByAtPointSince(OperationState state);

    List<Operation> findByTravellerIdInOrderByTravellerIdAscPositionAsc(Collection<Long> travellerIds);
}
