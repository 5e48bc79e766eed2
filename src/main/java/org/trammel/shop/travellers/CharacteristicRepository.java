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
}
