package org.trammel.shop.people;

import java.time.Instant;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;

interface SignOnFailureRepository extends JpaRepository<SignOnFailure, Long> {

    List<SignOnFailure> findTop10ByPersonIdOrderByIdDesc(long personId);

    @Modifying
    @Query("delete from SignOnFailure f where f.at < :before")
    int sweep(Instant before);
}
