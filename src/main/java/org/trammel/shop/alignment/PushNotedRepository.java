package org.trammel.shop.alignment;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.trammel.calc.metrology.Deviation;

interface PushNotedRepository extends JpaRepository<PushNotedRow, Long> {

    List<PushNotedRow> findAllByOrderById();

    List<PushNotedRow> findByDeviationAndMetalOrderById(Deviation deviation, String metal);
}
