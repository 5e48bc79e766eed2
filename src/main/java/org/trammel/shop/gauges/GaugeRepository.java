package org.trammel.shop.gauges;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
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

    boolean existsByCode(String code);

    Optional<GaugeRow> findByMakerNumber(String makerNumber);

    List<GaugeRow> findByCodeIn(Collection<String> codes);
}
