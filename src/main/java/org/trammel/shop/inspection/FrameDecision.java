package org.trammel.shop.inspection;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.people.DecisionPutForward;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.WordsRef;

/** That a frame stays as it is without being measured again, as somebody put it forward. */
@Entity
@Immutable
@Table(name = "rejudged_frame_decision")
class FrameDecision extends DecisionPutForward {

    @Column(name = "rejudgement_id")
    private long rejudgementId;

    private String serial;

    protected FrameDecision() {}

    FrameDecision(
            RejudgedFrame frame,
            int number,
            WordsRef words,
            boolean changesWhatWasOrdered,
            @Nullable WordsRef customer,
            Act act) {
        super(number, words, changesWhatWasOrdered, customer, act);
        this.rejudgementId = frame.rejudgementId();
        this.serial = frame.serial();
    }

    String serial() {
        return serial;
    }
}
