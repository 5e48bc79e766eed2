package org.trammel.shop.orders;

import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

interface OrderedColoursRepository extends Repository<OrderedColoursRow, Long> {

    OrderedColoursRow saveAndFlush(OrderedColoursRow row);

    List<OrderedColoursRow> findByOrderIdOrderById(long orderId);

    Optional<OrderedColoursRow> findFirstByOrderIdOrderByIdDesc(long orderId);
}
