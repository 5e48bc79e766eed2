package org.trammel.shop.people;

import java.time.LocalDate;
import org.springframework.data.jpa.repository.JpaRepository;

interface QualificationConfirmationRepository extends JpaRepository<QualificationConfirmation, Long> {

    boolean existsByQualificationIdAndConfirmedOn(long qualificationId, LocalDate confirmedOn);
}
