package org.trammel.shop.gauges;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface CalibrationRepository extends Repository<CalibrationRow, Long> {

    CalibrationRow save(CalibrationRow row);

    @Query("""
            select c from CalibrationRow c left join fetch c.points
            where c.gaugeId = :gaugeId order by c.calibratedOn desc
            """)
    List<CalibrationRow> withPoints(long gaugeId);

    /** The calibration that stood on a day. */
    Optional<CalibrationRow> findFirstByGaugeIdAndStandsTrueAndCalibratedOnLessThanEqualOrderByCalibratedOnDesc(
            long gaugeId, LocalDate on);

    boolean existsByGaugeIdAndCalibratedOn(long gaugeId, LocalDate on);
}
