package org.trammel.shop.materials;

import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface TubeIssueRepository extends Repository<TubeIssueRow, Long> {

    TubeIssueRow saveAndFlush(TubeIssueRow row);

    /** Those of a frame, or of a part of it, that were not scrapped, nor the part with them. */
    @Query("""
            select new org.trammel.shop.materials.TubeIssued(u.id, t.place, l.code, l.id, l.kind, l.metal, r.number, l.grade, l.heat, l.state,
                t.outside, t.wall, t.middle, t.otherWall, t.reason, u.by, u.at)
            from TubeIssueRow t join LotUseRow u on u.id = t.useId join LotRow l on l.id = u.lotId
                left join LotRemnantRow r on r.id = u.remnantId
            where u.serial = :serial and u.part = :part and u.scrapped = false and u.goneWith is null order by u.id
            """)
    List<TubeIssued> standing(String serial, String part);

    /** Whether a place of a frame, or of a part of it, lost its tube and has none since, or has one of a lot set aside. */
    @Query("""
            select count(t) > 0 from TubeIssueRow t join LotUseRow u on u.id = t.useId join LotRow l on l.id = u.lotId
            where u.serial = :serial and u.part = :part and u.goneWith is null and (
                u.scrapped = false and l.state in (org.trammel.shop.materials.LotState.QUARANTINED,
                    org.trammel.shop.materials.LotState.BLOCKED)
                or u.scrapped = true and not exists (
                    select 1 from TubeIssueRow o join LotUseRow v on v.id = o.useId
                    where v.serial = u.serial and v.part = u.part and v.scrapped = false and v.goneWith is null
                        and o.place = t.place))
            """)
    boolean asksForAnother(String serial, String part);

    /** A piece of a lot that stands at a place. */
    record Standing(long useId, String serial, String part) {}

    @Query("""
            select new org.trammel.shop.materials.TubeIssueRepository$Standing(u.id, u.serial, u.part)
            from TubeIssueRow t join LotUseRow u on u.id = t.useId
            where u.lotId = :lotId and u.scrapped = false and u.goneWith is null order by u.id
            """)
    List<Standing> ofLot(long lotId);

    /** Operations at which pieces of a lot were issued that were not scrapped. */
    @Query("""
            select distinct t.operationId from TubeIssueRow t join LotUseRow u on u.id = t.useId
                join LotRow l on l.id = u.lotId
            where l.code = :lot and u.scrapped = false and u.goneWith is null
            """)
    Set<Long> operationsOf(String lot);

    @Query("select distinct t.by from TubeIssueRow t where t.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
