package org.trammel.shop.routes;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface RetiredRepository extends JpaRepository<RetiredRow, Long> {

    List<RetiredRow> findByRouteIdOrderById(long routeId);
}
