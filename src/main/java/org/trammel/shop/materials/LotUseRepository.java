package org.trammel.shop.materials;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface LotUseRepository extends Repository<LotUseRow, Long> {

    LotUseRow save(LotUseRow row);

    Optional<LotUseRow> findById(long id);

    List<LotUseRow> findBySerialAndPartAndGoneWithIsNull(String serial, String part);

    @Query("select u.serial from LotUseRow u where u.id = :id")
    Optional<String> serialOf(long id);

    @Query("""
            select new org.trammel.shop.materials.WentInto(u.id, u.serial, u.part, u.operation, u.position, r.number,
                u.quantity, u.unit, u.by, u.at, u.scrapped, u.scrappedReason,
                u.goneWith)
            from LotUseRow u left join LotRemnantRow r on r.id = u.remnantId
            where u.lotId = :lotId order by u.serial, u.part, u.id
            """)
    List<WentInto> wentInto(long lotId);

    @Query("""
            select new org.trammel.shop.materials.MadeOf(u.id, l.code, l.kind, l.what, l.grade, l.heat, l.certificate,
                l.state, u.part, u.operation, u.position, r.number, u.quantity, u.unit, u.by, u.at, u.scrapped, t.place,
                u.scrappedAt, u.goneWith)
            from LotUseRow u join LotRow l on l.id = u.lotId left join LotRemnantRow r on r.id = u.remnantId
                left join TubeIssueRow t on t.useId = u.id
            where u.serial = :serial order by u.part, u.id
            """)
    List<MadeOf> madeOf(String serial);

    /** A lot of tube and where a piece of it went. */
    record TubeIn(String serial, String part, @Nullable Long goneWith, String lot) {}

    @Query("""
            select distinct new org.trammel.shop.materials.LotUseRepository$TubeIn(u.serial, u.part, u.goneWith,
                l.code)
            from LotUseRow u join LotRow l on l.id = u.lotId
            where u.serial in :serials and u.scrapped = false and l.kind = org.trammel.shop.materials.LotKind.TUBE
            """)
    List<TubeIn> tubesIn(Collection<String> serials);
}
