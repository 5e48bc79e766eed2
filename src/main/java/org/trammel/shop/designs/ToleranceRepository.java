package org.trammel.shop.designs;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface ToleranceRepository extends JpaRepository<ToleranceRow, Long> {

    /** A class with its newest row. */
    record InForce(ToleranceClass kind, ToleranceRow row) {}

    @Query("select new org.trammel.shop.designs.ToleranceRepository$InForce(c, t) from ToleranceClass c, ToleranceRow t"
            + " where t.classCode = c.code and t.id = (select max(o.id) from ToleranceRow o where o.classCode = c.code)"
            + " order by c.sequence")
    List<InForce> inForce();

    List<ToleranceRow> findByClassCodeOrderByIdDesc(String classCode);
}
