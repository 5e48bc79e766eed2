package org.trammel.shop.coats;

import java.util.List;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface FinishRepository extends Repository<FinishRow, Long> {

    FinishRow saveAndFlush(FinishRow row);

    List<FinishRow> findByCodeOrderByIdDesc(String code);

    List<FinishRow> findBySupersededAtIsNullOrderByCode();

    /** Every revision that names an operation, the superseded ones too; the exact code is asked for after. */
    @Query("""
            select f from FinishRow f
            where f.blastOperations like %:operation% or f.coatOperations like %:operation%
               or f.filmOperations like %:operation%
               or f.layOperations like %:operation% or f.drawOperations like %:operation%
            order by f.id
            """)
    List<FinishRow> naming(String operation);
}
