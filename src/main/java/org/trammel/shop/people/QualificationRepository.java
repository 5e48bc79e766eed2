package org.trammel.shop.people;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface QualificationRepository extends JpaRepository<QualificationRow, Long> {

    List<QualificationRow> findByPersonIdAndKind(long personId, String kind);

    List<QualificationRow> findByPersonIdOrderByKind(long personId);
}
