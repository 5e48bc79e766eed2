package org.trammel.shop.inspection;

import jakarta.persistence.QueryHint;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.hibernate.jpa.HibernateHints;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.jpa.repository.QueryHints;

interface ReadingRepository extends JpaRepository<Reading, Long> {

    List<Reading> findByCharacteristicIdOrderById(long characteristicId);

    List<Reading> findByCharacteristicIdInOrderById(Collection<Long> characteristicIds);

    List<Reading> findByTravellerIdInOrderById(Collection<Long> travellerIds);

    /** Readings of these codes that no correction took the place of, in their order; only what a chart needs of them. */
    @Query("""
            select new org.trammel.shop.inspection.PreSetReadings$Line(r.id, r.travellerId, r.characteristicCode, r.value,
                r.unit, r.nominal, r.lowerLimit, r.upperLimit, r.at)
            from Reading r
            where r.characteristicCode in :codes and not exists (select 1 from Reading n where n.replacesId = r.id)
            order by r.id
            """)
    List<PreSetReadings.Line> notReplaced(Collection<String> codes);

    /** The same of some travellers. */
    @Query("""
            select new org.trammel.shop.inspection.PreSetReadings$Line(r.id, r.travellerId, r.characteristicCode, r.value,
                r.unit, r.nominal, r.lowerLimit, r.upperLimit, r.at)
            from Reading r
            where r.travellerId in :travellers and r.characteristicCode in :codes
              and not exists (select 1 from Reading n where n.replacesId = r.id)
            order by r.id
            """)
    List<PreSetReadings.Line> notReplacedOf(Collection<String> codes, Collection<Long> travellers);

    @Query("""
            select distinct r.travellerId from Reading r where r.characteristicCode in :codes and r.at >= :moment
            """)
    Set<Long> travellersSince(Instant moment, Collection<String> codes);

    List<Reading> findByActId(UUID actId);

    boolean existsByReplacesId(long replacesId);

    Optional<Reading> findFirstByCharacteristicIdOrderByIdDesc(long characteristicId);

    /** What was read with any of the means in a time, after a reading and up to another, in their order. Only looked at. */
    @QueryHints(@QueryHint(name = HibernateHints.HINT_READ_ONLY, value = "true"))
    @Query("""
            select r from Reading r
            where r.gaugeId in :means and r.id > :after and r.id <= :last and r.at >= :since and r.at <= :until
            order by r.id
            """)
    List<Reading> suspect(Collection<Long> means, long after, long last, Instant since, Instant until, Limit limit);

    /** Of these readings those that were reduced from figures of several gauges, or computed from what one read. */
    @Query("select distinct g.readingId from ReadingGauge g where g.readingId in :ids")
    Set<Long> withGaugesOfFigures(Collection<Long> ids);

    /** The same of what was reduced from figures that any of the means read, and names another gauge. */
    @QueryHints(@QueryHint(name = HibernateHints.HINT_READ_ONLY, value = "true"))
    @Query("""
            select r from ReadingGauge g join Reading r on r.id = g.readingId
            where g.gaugeId in :means and (r.gaugeId is null or r.gaugeId not in :means)
              and g.readingId > :after and g.readingId <= :last and r.at >= :since and r.at <= :until
            order by g.readingId
            """)
    List<Reading> suspectUnderAnotherName(
            Collection<Long> means, long after, long last, Instant since, Instant until, Limit limit);

    /** How many were reduced from figures that any of the means read, and name another gauge, and the last of them. */
    @Query("""
            select new org.trammel.shop.inspection.Rejudgement$Extent(
                count(distinct r.id), coalesce(max(r.id), 0L)) from ReadingGauge g join Reading r on r.id = g.readingId
            where g.gaugeId in :means and (r.gaugeId is null or r.gaugeId not in :means) and r.at >= :since and r.at <= :until
            """)
    Rejudgement.Extent extentUnderAnotherName(Collection<Long> means, Instant since, Instant until);

    /** How many were read with any of the means in a time, and the last of them. */
    @Query("""
            select new org.trammel.shop.inspection.Rejudgement$Extent(count(r), coalesce(max(r.id), 0L)) from Reading r
            where r.gaugeId in :means and r.at >= :since and r.at <= :until
            """)
    Rejudgement.Extent extent(Collection<Long> means, Instant since, Instant until);

    /** When one arrived, by the server, and was taken, by the tablet. */
    record Clocked(Instant at, Instant deviceAt) {}

    @Query("""
            select new org.trammel.shop.inspection.ReadingRepository$Clocked(r.at, r.deviceAt) from Reading r
            where r.travellerId = :travellerId and r.deviceId = :device and r.deviceAt is not null and r.at >= :since
            order by r.id desc
            """)
    List<Clocked> newestAt(long device, long travellerId, Instant since, Limit limit);

    @Query("select distinct r.personId from Reading r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);

    /** But for those who only made a record count, of what no gauge in anybody's hand read, such as an oven's log. */
    @Query("""
            select distinct r.personId from Reading r
            where r.characteristicId in :characteristicIds
              and (r.record is null or r.gaugeId is not null
                   or exists (select 1 from ReadingGauge g where g.readingId = r.id))
            """)
    Set<Long> peopleOn(Collection<Long> characteristicIds);

    @Query("""
            select r from Reading r where r.characteristicCode = :code
              and not exists (select 1 from Reading n where n.replacesId = r.id)
            order by r.id desc
            """)
    List<Reading> newestOf(String code, Limit limit);
}
