package org.trammel.shop.travellers;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** What is asked of the gates of all frames at once. */
interface GateQueries extends Repository<Operation, Long> {

    /** A gate a frame came to. */
    record Begun(
            long operationId,
            String code,
            String name,
            @Nullable Instant finishedAt) {}

    @Query("""
            select new org.trammel.shop.travellers.GateQueries$Begun(o.id, o.code, o.name, o.finishedAt)
            from Operation o, Traveller t
            where t.id = o.travellerId and t.orderId is not null and o.loop = 0 and o.carried = false
              and o.point <> org.trammel.shop.routes.Point.NONE and o.startedAt >= :moment
            order by o.code, o.id
            """)
    List<Begun> begunSince(Instant moment);
}
