package org.trammel.shop.materials;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface PowderSheetRepository extends Repository<PowderSheetRow, Long> {

    PowderSheetRow saveAndFlush(PowderSheetRow row);

    /** Every one of a lot, oldest first. */
    @Query("select s from PowderSheetRow s, LotRow l where l.code = :code and s.lotId = l.id order by s.id")
    List<PowderSheetRow> all(String code);

    /** The one that stands. */
    @Query("""
            select s from PowderSheetRow s, LotRow l where l.code = :code and s.lotId = l.id
            and s.id = (select max(n.id) from PowderSheetRow n where n.lotId = l.id)
            """)
    Optional<PowderSheetRow> newest(String code);
}
