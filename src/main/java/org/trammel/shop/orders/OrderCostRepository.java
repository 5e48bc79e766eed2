package org.trammel.shop.orders;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface OrderCostRepository extends JpaRepository<OrderCost, Long> {

    List<OrderCost> findByOrderIdOrderById(long orderId);
}
