package org.trammel.shop.nonconformance;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface AgreementRepository extends JpaRepository<Agreement, Long> {

    List<Agreement> findByNonconformanceIdOrderById(long nonconformanceId);
}
