package org.trammel.shop.orders;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface OrderChangeRepository extends JpaRepository<OrderChange, Long> {

    List<OrderChange> findByOrderIdOrderById(long orderId);
}
