package org.trammel.shop.assembly;

import java.time.Instant;
import java.util.List;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface OwnPartCheckRepository extends Repository<OwnPartCheckRow, Long> {

    OwnPartCheckRow saveAndFlush(OwnPartCheckRow row);

    @Query(
            "select distinct r.orderId from OwnPartCheckRow r where r.gauge = :gauge and r.at >= :since order by r.orderId")
    List<Long> ordersWith(String gauge, Instant since);

    List<OwnPartCheckRow> findByOrderIdOrderById(long orderId);
}
