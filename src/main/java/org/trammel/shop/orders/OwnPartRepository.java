package org.trammel.shop.orders;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface OwnPartRepository extends JpaRepository<OwnPart, Long> {

    List<OwnPart> findByOrderIdOrderById(long orderId);
}
