package org.trammel.shop.people;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface PersonNameRepository extends JpaRepository<PersonName, Long> {

    List<PersonName> findByPersonIdOrderBySinceAscIdAsc(long personId);
}
