package org.trammel.shop.drift;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

interface JigUseRepository extends Repository<JigUseRow, Long> {

    JigUseRow save(JigUseRow row);

    List<JigUseRow> findAllByOrderById();

    List<JigUseRow> findByTravellerIdIn(Collection<Long> travellerIds);

    Optional<JigUseRow> findFirstByTravellerIdInOrderByIdDesc(Collection<Long> travellerIds);
}
