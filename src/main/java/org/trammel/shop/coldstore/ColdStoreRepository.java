package org.trammel.shop.coldstore;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface ColdStoreRepository extends Repository<ColdStoreMoveRow, Long> {

    ColdStoreMoveRow saveAndFlush(ColdStoreMoveRow row);

    Optional<ColdStoreMoveRow> findFirstByTravellerIdOrderByIdDesc(long travellerId);

    List<ColdStoreMoveRow> findAllByOrderByIdDesc(Limit limit);

    List<ColdStoreMoveRow> findBySerialOrderById(String serial);

    /** The last move of every frame that lies there. */
    @Query("""
            select m from ColdStoreMoveRow m
            where m.wentIn = true
              and not exists (select 1 from ColdStoreMoveRow n where n.travellerId = m.travellerId and n.id > m.id)
            order by m.id
            """)
    List<ColdStoreMoveRow> lying();
}
