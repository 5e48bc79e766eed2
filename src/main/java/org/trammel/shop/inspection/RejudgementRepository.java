package org.trammel.shop.inspection;

import java.util.Collection;
import java.util.List;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface RejudgementRepository extends JpaRepository<Rejudgement, Long> {

    @Query(
            "select r.id from Rejudgement r where r.state = org.trammel.shop.inspection.RejudgementState.JUDGING order by r.id")
    List<Long> beingJudged();

    @Query("""
            select r from Rejudgement r
            where r.state <> org.trammel.shop.inspection.RejudgementState.CLOSED order by r.id
            """)
    List<Rejudgement> open();

    List<Rejudgement> findByIdLessThanOrderByIdDesc(long before, Limit limit);

    /** Frames of each, and how many of them wait for a result. */
    @Query("""
            select f.rejudgementId as id, count(f) as frames,
                sum(case when f.outcome <> org.trammel.shop.inspection.FrameOutcome.CLEARED and f.result is null
                    then 1 else 0 end) as waiting
            from RejudgedFrame f where f.rejudgementId in :ids group by f.rejudgementId
            """)
    List<Counted> framesOf(Collection<Long> ids);

    /** How many frames of a re-judgement there are. */
    interface Counted {
        long getId();

        long getFrames();

        long getWaiting();
    }
}
