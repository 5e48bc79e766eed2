package org.trammel.shop.inspection;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface RejudgedFrameRepository extends JpaRepository<RejudgedFrame, RejudgedFrameKey> {

    List<RejudgedFrame> findByRejudgementIdAndSerialIn(long rejudgementId, Collection<String> serials);

    Optional<RejudgedFrame> findByRejudgementIdAndSerial(long rejudgementId, String serial);

    /** What waits for a result first, the worst of them first; then those that have one; cleared ones last. */
    @Query("""
            select f from RejudgedFrame f where f.rejudgementId = :id
            order by case when f.outcome = org.trammel.shop.inspection.FrameOutcome.CLEARED then 2
                          when f.result is null then 0 else 1 end, f.place, f.serial
            limit :size offset :from
            """)
    List<RejudgedFrame> page(long id, int from, int size);

    /** Words of what the owners of a frame were told, in every re-judgement. */
    @Query("""
            select f.resultWordsId from RejudgedFrame f
            where f.serial = :serial and f.result = org.trammel.shop.inspection.FrameResult.OWNER_CONTACTED
            """)
    List<Long> toldOf(String serial);
}
