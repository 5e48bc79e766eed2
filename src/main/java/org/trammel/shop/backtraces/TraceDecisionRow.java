package org.trammel.shop.backtraces;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.people.DecisionPutForward;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.WordsRef;

/** That a frame stays as it is although its run is in doubt, as somebody put it forward. */
@Entity
@Immutable
@Table(name = "oven_trace_decision")
class TraceDecisionRow extends DecisionPutForward {

    @Column(name = "frame_id")
    private long frameId;

    protected TraceDecisionRow() {}

    TraceDecisionRow(
            TracedFrameRow frame,
            int number,
            WordsRef words,
            boolean changesWhatWasOrdered,
            @Nullable WordsRef customer,
            Act act) {
        super(number, words, changesWhatWasOrdered, customer, act);
        this.frameId = frame.id();
    }

    long frameId() {
        return frameId;
    }
}
