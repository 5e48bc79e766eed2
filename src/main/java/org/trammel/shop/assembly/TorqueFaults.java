package org.trammel.shop.assembly;

import org.springframework.stereotype.Component;
import org.trammel.shop.nonconformance.NonconformanceLine;
import org.trammel.shop.nonconformance.NonconformanceReads;
import org.trammel.shop.nonconformance.NonconformanceState;
import org.trammel.shop.nonconformance.Opening;
import org.trammel.shop.records.Act;

/** A torque outside what is allowed opens a nonconformance, as a refused reading does; one that is open stands for it. */
@Component
class TorqueFaults {

    private static final int LONGEST = 1000;

    private final Opening opening;
    private final NonconformanceReads reads;

    TorqueFaults(Opening opening, NonconformanceReads reads) {
        this.opening = opening;
        this.reads = reads;
    }

    /** @return number of the nonconformance */
    String open(Act act, TorqueTurn.At at, String words) {
        long operation = at.line().operationId();
        return reads.of(at.head().serial()).stream()
                .filter(one -> one.operationId() == operation
                        && (one.state() == NonconformanceState.OPEN || one.state() == NonconformanceState.PROPOSED))
                .map(NonconformanceLine::number)
                .findFirst()
                .orElseGet(() -> opening.byHand(
                        act,
                        at.head().travellerId(),
                        operation,
                        null,
                        at.line().code(),
                        words.length() > LONGEST ? words.substring(0, LONGEST - 1) + "…" : words));
    }
}
