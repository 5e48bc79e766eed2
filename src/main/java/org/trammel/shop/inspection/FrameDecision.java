package org.trammel.shop.inspection;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.WordsRef;

/** That a frame stays as it is without being measured again, as somebody put it forward. Only added to. */
@Entity
@Immutable
@Table(name = "rejudged_frame_decision")
class FrameDecision {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "rejudgement_id")
    private long rejudgementId;

    private String serial;
    private int number;

    @Column(name = "words_id")
    private long wordsId;

    @Column(name = "changes_what_was_ordered")
    private boolean changesWhatWasOrdered;

    @Column(name = "customer_words_id")
    private @Nullable Long customerWordsId;

    @Column(name = "by_person")
    private long by;

    private Instant at;

    protected FrameDecision() {}

    /**
     * @param number which of those ever put forward for the frame in this re-judgement
     * @param customer who of the customer agreed, when and how; needed where it changes what was ordered
     */
    FrameDecision(
            RejudgedFrame frame,
            int number,
            WordsRef words,
            boolean changesWhatWasOrdered,
            @Nullable WordsRef customer,
            Act act) {
        this.rejudgementId = frame.rejudgementId();
        this.serial = frame.serial();
        this.number = number;
        this.wordsId = words.id();
        this.changesWhatWasOrdered = changesWhatWasOrdered;
        this.customerWordsId = customer == null ? null : customer.id();
        this.by = act.by();
        this.at = act.at();
    }

    long id() {
        return id;
    }

    String serial() {
        return serial;
    }

    int number() {
        return number;
    }

    long wordsId() {
        return wordsId;
    }

    boolean changesWhatWasOrdered() {
        return changesWhatWasOrdered;
    }

    @Nullable
    Long customerWordsId() {
        return customerWordsId;
    }
}
