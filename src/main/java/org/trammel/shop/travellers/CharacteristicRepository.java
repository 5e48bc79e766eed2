package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface CharacteristicRepository extends JpaRepository<Characteristic, Long> {

    List<Characteristic> findByOperationIdOrderByPosition(long operationId);

    List<Characteristic> findByOperationIdInOrderByOperationIdAscPositionAsc(Collection<Long> operationIds);
}
