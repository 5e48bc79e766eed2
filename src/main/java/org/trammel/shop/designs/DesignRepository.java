package org.trammel.shop.designs;

import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;

interface DesignRepository extends JpaRepository<Design, Long> {

    Optional<Design> findByDrawnFor(String drawnFor);
}
