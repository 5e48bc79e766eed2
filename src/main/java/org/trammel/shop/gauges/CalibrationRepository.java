package org.trammel.shop.gauges;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

interface CalibrationRepository extends Repository<CalibrationRow, Long> {

    CalibrationRow save(CalibrationRow row);

    List<CalibrationRow> findByGaugeIdOrderByCalibratedOnDesc(long gaugeId);

    /** The calibration that stood on a day. */
    Optional<CalibrationRow> findFirstByGaugeIdAndCalibratedOnLessThanEqualOrderByCalibratedOnDesc(
            long gaugeId, LocalDate on);

    boolean existsByGaugeIdAndCalibratedOn(long gaugeId, LocalDate on);
}
