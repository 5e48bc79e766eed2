package org.trammel.shop.orders;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface OrderPromiseRepository extends JpaRepository<OrderPromise, Long> {

    List<OrderPromise> findByOrderIdOrderById(long orderId);
}
