package org.trammel.shop.materials;

import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface TubeBarRepository extends Repository<TubeBarRow, Long> {

    TubeBarRow saveAndFlush(TubeBarRow row);

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select b from TubeBarRow b where b.id = :id")
    Optional<TubeBarRow> lock(long id);

    @Query("select l.code from TubeBarRow b join LotRow l on l.id = b.lotId where b.id = :id")
    Optional<String> lotOf(long id);

    @Query("""
            select new org.trammel.shop.materials.Bars(b.id, b.lotId, l.code, l.metal, l.state, l.expiresOn, b.outside,
                b.wall, b.length, b.bars, b.remnant, b.butted)
            from TubeBarRow b join LotRow l on l.id = b.lotId
            where b.bars > 0 order by l.metal, b.outside, b.wall, b.remnant desc, b.length, b.id
            """)
    List<Bars> onRack(Limit limit);
}
