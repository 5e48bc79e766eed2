package org.trammel.shop.people;

import java.time.Instant;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface SignOnFailureRepository extends JpaRepository<SignOnFailure, Long> {

    List<SignOnFailure> findTop10ByPersonIdOrderByIdDesc(long personId);

    long countByAtAfter(Instant after);
}
