package org.trammel.shop.orders;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/** A change the customer asks for, and the answer. */
@Entity
@Table(name = "order_change")
class OrderChange {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private long orderId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private State state;

    private long askedWords;
    private long askedBy;
    private Instant askedAt;
    private @Nullable Long answerWords;
    private @Nullable Long answeredBy;
    private @Nullable Instant answeredAt;

    @Version
    private long version;

    protected OrderChange() {}

    /** Where a request stands. */
    enum State {
        ASKED("asked"),
        AGREED("agreed"),
        DECLINED("declined");

        private final String word;

        State(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    OrderChange(long orderId, long askedWords, Act act) {
        this.orderId = orderId;
        this.state = State.ASKED;
        this.askedWords = askedWords;
        this.askedBy = act.by();
        this.askedAt = act.at();
    }

    void answer(boolean agreed, long words, Act act) {
        if (state != State.ASKED) {
            throw Refusal.state(
                    "The change request was not answered.",
                    "It is " + state.word() + " already.",
                    "Enter a new request if the customer asks again.");
        }
        state = agreed ? State.AGREED : State.DECLINED;
        answerWords = words;
        answeredBy = act.by();
        answeredAt = act.at();
    }

    long id() {
        return id;
    }

    long orderId() {
        return orderId;
    }

    State state() {
        return state;
    }

    long askedWords() {
        return askedWords;
    }

    long askedBy() {
        return askedBy;
    }

    Instant askedAt() {
        return askedAt;
    }

    @Nullable
    Long answerWords() {
        return answerWords;
    }

    @Nullable
    Long answeredBy() {
        return answeredBy;
    }

    @Nullable
    Instant answeredAt() {
        return answeredAt;
    }
}
