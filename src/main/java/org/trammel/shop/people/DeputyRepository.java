package org.trammel.shop.people;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface DeputyRepository extends JpaRepository<DeputyRow, Long> {

    List<DeputyRow> findByRoleOrderById(Role role);

    List<DeputyRow> findByPersonIdOrderById(long personId);
}
