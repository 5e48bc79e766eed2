package org.trammel.shop.nonconformance;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Lists of nonconformances with their agreements, two statements however many there are. */
@Service
@Transactional(readOnly = true)
public class NonconformanceReads {

    private final NonconformanceRepository all;
    private final AgreementsOfMany agreements;

    NonconformanceReads(NonconformanceRepository all, AgreementsOfMany agreements) {
        this.all = all;
        this.agreements = agreements;
    }

    /** Those that want a decision or an agreement, oldest first. */
    public List<NonconformanceLine> undecided() {
        return lines(all.findByStateInOrderByOpenedAtAscIdAsc(
                EnumSet.of(NonconformanceState.OPEN, NonconformanceState.PROPOSED)));
    }

    /** Every one of a frame, oldest first. */
    public List<NonconformanceLine> of(String serial) {
        return lines(all.findBySerialOrderById(serial));
    }

    /**
     * A page of all, newest first.
     *
     * @param before number of the id to go on below; {@link Long#MAX_VALUE} for the first page
     */
    public List<NonconformanceLine> page(long before, int size) {
        return lines(all.findByIdLessThanOrderByIdDesc(before, Limit.of(size)));
    }

    private List<NonconformanceLine> lines(List<Nonconformance> found) {
        if (found.isEmpty()) {
            return List.of();
        }
        Map<Long, List<Agreement>> agreed =
                agreements
                        .findByNonconformanceIdInOrderById(
                                found.stream().map(Nonconformance::id).toList())
                        .stream()
                        .collect(Collectors.groupingBy(Agreement::nonconformanceId));
        return found.stream()
                .map(n -> NonconformanceLine.of(n, agreed.getOrDefault(n.id(), List.of())))
                .toList();
    }
}
