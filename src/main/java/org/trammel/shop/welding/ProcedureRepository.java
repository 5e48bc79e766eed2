package org.trammel.shop.welding;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface ProcedureRepository extends Repository<ProcedureRow, Long> {

    ProcedureRow saveAndFlush(ProcedureRow row);

    List<ProcedureRow> findByCodeOrderByIdDesc(String code);

    List<ProcedureRow> findByStateInOrderByCodeAscIdAsc(Collection<ProcedureState> states);

    /** Every revision for a metal that was ever in force, the superseded ones too. */
    @Query("""
            select p from ProcedureRow p
            where p.content.metal = :metal and p.state <> org.trammel.shop.welding.ProcedureState.DRAFT
            order by p.id
            """)
    List<ProcedureRow> everInForceFor(String metal);
}
