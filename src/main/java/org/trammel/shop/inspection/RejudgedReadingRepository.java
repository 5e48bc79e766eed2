package org.trammel.shop.inspection;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface RejudgedReadingRepository extends JpaRepository<RejudgedReading, RejudgedKey> {

    @Query("""
            select r from RejudgedReading r where r.rejudgementId = :id
            order by r.place, r.serial, r.readingId limit :size offset :from
            """)
    List<RejudgedReading> page(long id, int from, int size);

    List<RejudgedReading> findByRejudgementIdAndSerialOrderByPlaceAscReadingIdAsc(long rejudgementId, String serial);

    long countByRejudgementId(long rejudgementId);
}
