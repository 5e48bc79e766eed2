package org.trammel.shop.alignment;

import java.util.List;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface TableCharacteristicRepository extends Repository<TableCharacteristicRow, Long> {

    TableCharacteristicRow save(TableCharacteristicRow row);

    @Query("""
            select r from TableCharacteristicRow r where r.id in
              (select max(n.id) from TableCharacteristicRow n group by lower(n.name))
            order by r.id
            """)
    List<TableCharacteristicRow> inForce();
}
