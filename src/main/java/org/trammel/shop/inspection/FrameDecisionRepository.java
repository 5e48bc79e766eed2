package org.trammel.shop.inspection;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface FrameDecisionRepository extends JpaRepository<FrameDecision, Long> {

    /** The one that stands, which is the last. */
    Optional<FrameDecision> findFirstByRejudgementIdAndSerialOrderByNumberDesc(long rejudgementId, String serial);

    List<FrameDecision> findByRejudgementIdAndSerialInOrderByNumber(long rejudgementId, Collection<String> serials);

    /** Words of who of the customer agreed, in every decision ever put forward for a frame. */
    @Query("select d.customerWordsId from FrameDecision d where d.serial = :serial and d.customerWordsId is not null")
    List<Long> customerWordsOf(String serial);
}
