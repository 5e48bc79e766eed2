package org.trammel.shop.routes;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;

interface RouteRepository extends JpaRepository<RouteRow, Long> {

    Optional<RouteRow> findByCode(String code);

    List<RouteRow> findAllByOrderByCode();

    boolean existsByCode(String code);
}
