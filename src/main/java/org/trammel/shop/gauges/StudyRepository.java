package org.trammel.shop.gauges;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface StudyRepository extends Repository<StudyRow, Long> {

    StudyRow saveAndFlush(StudyRow row);

    Optional<StudyRow> findByActId(UUID actId);

    @Query("select s from StudyRow s where s.gaugeId = :gaugeId order by s.id desc")
    List<StudyRow> ofGauge(long gaugeId);

    @Query("select s from StudyRow s left join fetch s.readings where s.id = :id and s.gaugeId = :gaugeId")
    Optional<StudyRow> withReadings(long gaugeId, long id);
}
