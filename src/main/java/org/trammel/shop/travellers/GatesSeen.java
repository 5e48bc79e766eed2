package org.trammel.shop.travellers;

import java.time.Instant;
import java.util.List;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Which gates frames came to, for whoever reckons how many passed. */
@Service
@Transactional(readOnly = true)
public class GatesSeen {

    private final GateQueries queries;

    GatesSeen(GateQueries queries) {
        this.queries = queries;
    }

    /**
     * An operation with a hold or witness point that a frame came to for the first time.
     *
     * @param finished whether its point is behind the frame, be it that it was done over since
     */
    public record Line(long operationId, String code, String name, boolean finished) {}

    /**
     * Those begun since a moment, by code; what was kept from an older revision is no gate passed, nor is one of a loop.
     * One statement.
     */
    public List<Line> since(Instant moment) {
        return queries.begunSince(moment).stream()
                .map(each -> new Line(each.operationId(), each.code(), each.name(), each.finishedAt() != null))
                .toList();
    }
}
