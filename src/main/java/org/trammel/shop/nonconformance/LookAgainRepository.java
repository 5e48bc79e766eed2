package org.trammel.shop.nonconformance;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface LookAgainRepository extends JpaRepository<LookAgain, Long> {

    List<LookAgain> findByNonconformanceIdOrderById(long nonconformanceId);
}
