package org.trammel.shop.gauges;

import jakarta.persistence.LockModeType;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface GaugeRepository extends Repository<GaugeRow, Long> {

    GaugeRow saveAndFlush(GaugeRow row);

    @Query("select g from GaugeRow g left join fetch g.ranges left join fetch g.parts where g.code = :code")
    Optional<GaugeRow> withRanges(String code);

    @Query("select g from GaugeRow g left join fetch g.ranges left join fetch g.parts where g.id in :ids")
    List<GaugeRow> withRanges(Collection<Long> ids);

    @Query("select g from GaugeRow g left join fetch g.ranges left join fetch g.parts")
    List<GaugeRow> everyOne();

    @Query("""
            select g from GaugeRow g left join fetch g.ranges left join fetch g.parts
            where g.state = org.trammel.shop.gauges.GaugeState.IN_USE
            and exists (select 1 from GaugeRow o join o.ranges r where o = g and r.kind = :kind and r.unit = :unit)
            """)
    List<GaugeRow> serving(String kind, String unit);

    @Query(
            "select s from GaugeRow s join fetch s.parts where s in (select o from GaugeRow o join o.parts p where p.id = :part)")
    List<GaugeRow> setupsWith(long part);

    /** A page of ids by what falls due first, after a due date and code; what was never calibrated counts as due. */
    @Query("""
            select g.id from GaugeRow g
            where (:retired = true or g.state <> org.trammel.shop.gauges.GaugeState.RETIRED)
            and (coalesce(g.dueOn, :never) > :due or coalesce(g.dueOn, :never) = :due and g.code > :code)
            order by coalesce(g.dueOn, :never), g.code
            """)
    List<Long> page(boolean retired, LocalDate never, LocalDate due, String code, Limit limit);

    /** With the parts of those that are set-ups, each as it is now, and kept so until the transaction ends. */
    @Lock(LockModeType.PESSIMISTIC_READ)
    @Query("""
            select g from GaugeRow g
            where g.code in :codes or g.id in (select p.id from GaugeRow s join s.parts p where s.code in :codes)
            order by g.id
            """)
    List<GaugeRow> kept(Collection<String> codes);

    /** As it is now; waits until nobody keeps it any more. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select g from GaugeRow g where g.code = :code")
    Optional<GaugeRow> toChange(String code);

    /** When it was last recorded that a gauge was found wrong. */
    record FoundWrong(String code, Instant at) {}

    @Query("""
            select new org.trammel.shop.gauges.GaugeRepository$FoundWrong(g.code, max(f.at))
            from GaugeRow g left join g.parts p join FailureRow f on f.gaugeId = g.id or f.gaugeId = p.id
            where g.code in :codes group by g.code
            """)
    List<FoundWrong> lastFoundWrong(Collection<String> codes);

    boolean existsByCode(String code);

    Optional<GaugeRow> findByMakerNumber(String makerNumber);

    List<GaugeRow> findByCodeIn(Collection<String> codes);
}
