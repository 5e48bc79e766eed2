package org.trammel.shop.travellers;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface FrameClockRepository extends JpaRepository<FrameClock, Long> {

    List<FrameClock> findByTravellerIdOrderById(long travellerId);

    List<FrameClock> findByTravellerIdIn(Collection<Long> travellerIds);

    @Query("""
            select c from FrameClock c
            where c.state = org.trammel.shop.travellers.ClockState.RUNNING
              and c.kind = org.trammel.shop.routes.ClockKind.WINDOW and c.endsAt < :now
            order by c.endsAt
            """)
    List<FrameClock> closedBefore(Instant now, Limit limit);
}
