package org.trammel.shop.records;

import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;

interface CheckpointRepository extends JpaRepository<Checkpoint, Long> {

    Optional<Checkpoint> findTopByOrderByNumberDesc();
}
