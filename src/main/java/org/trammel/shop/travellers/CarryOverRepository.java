package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface CarryOverRepository extends JpaRepository<CarryOver, Long> {

    List<CarryOver> findByOldOperationIdInOrderById(Collection<Long> operationIds);

    List<CarryOver> findByNewOperationIdIn(Collection<Long> operationIds);
}
