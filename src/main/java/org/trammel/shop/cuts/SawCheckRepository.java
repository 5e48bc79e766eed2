package org.trammel.shop.cuts;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface SawCheckRepository extends Repository<SawCheckRow, Long> {

    SawCheckRow saveAndFlush(SawCheckRow row);

    Optional<SawCheckRow> findFirstBySawOrderByIdDesc(String saw);

    /** The newest of every saw. */
    @Query("select c from SawCheckRow c where c.id in (select max(d.id) from SawCheckRow d group by d.saw)")
    List<SawCheckRow> newest();
}
