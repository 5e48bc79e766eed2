package org.trammel.shop.people;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface LiftedLockRepository extends JpaRepository<LiftedLock, Long> {

    List<LiftedLock> findTop5ByPersonIdOrderByIdDesc(long personId);
}
