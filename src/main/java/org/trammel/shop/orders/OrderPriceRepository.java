package org.trammel.shop.orders;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface OrderPriceRepository extends JpaRepository<OrderPrice, Long> {

    List<OrderPrice> findByOrderIdOrderById(long orderId);
}
