package org.trammel.shop.nonconformance;

import java.util.EnumSet;
import java.util.List;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Lists of nonconformances, a fixed number of statements however many there are. */
@Service
@Transactional(readOnly = true)
public class NonconformanceReads {

    private final NonconformanceRepository all;
    private final Lines lines;

    NonconformanceReads(NonconformanceRepository all, Lines lines) {
        this.all = all;
        this.lines = lines;
    }

    /** Those that want a decision or an agreement, oldest first. */
    public List<NonconformanceLine> undecided() {
        return lines.of(all.findByStateInOrderByOpenedAtAscIdAsc(
                EnumSet.of(NonconformanceState.OPEN, NonconformanceState.PROPOSED)));
    }

    /** Every one of a frame, oldest first. */
    public List<NonconformanceLine> of(String serial) {
        return lines.of(all.findBySerialOrderById(serial));
    }

    /**
     * A page of all, newest first.
     *
     * @param before number of the id to go on below; {@link Long#MAX_VALUE} for the first page
     */
    public List<NonconformanceLine> page(long before, int size) {
        return lines.of(all.findByIdLessThanOrderByIdDesc(before, Limit.of(size)));
    }
}
