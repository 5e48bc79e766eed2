package org.trammel.shop.people;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface AbsenceRepository extends JpaRepository<AbsenceRow, Long> {

    List<AbsenceRow> findByPersonIdOrderByFromOn(long personId);
}
