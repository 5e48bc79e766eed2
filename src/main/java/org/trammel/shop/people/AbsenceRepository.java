package org.trammel.shop.people;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface AbsenceRepository extends JpaRepository<AbsenceRow, Long> {

    @Query("select distinct a.personId from AbsenceRow a where :day between a.fromOn and a.untilOn")
    Set<Long> awayOn(LocalDate day);

    List<AbsenceRow> findByPersonIdOrderByFromOn(long personId);
}
