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
import java.time.LocalDate;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/** A part of the customer's own: awaited, measured when it comes, in our custody until it goes back. */
@Entity
@Table(name = "own_part")
class OwnPart {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private long orderId;
    private String what;
    private String description;
    private @Nullable LocalDate dueOn;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private State state;

    private @Nullable Instant arrivedAt;
    private @Nullable Long arrivedBy;
    private @Nullable Long measuredWords;
    private @Nullable Instant endedAt;
    private @Nullable Long endedBy;
    private @Nullable Long endedWords;
    private @Nullable Instant replacedAt;
    private @Nullable Long replacedBy;
    private @Nullable Long agreedWords;

    @Version
    private long version;

    protected OwnPart() {}

    /** Where a part stands. */
    enum State {
        EXPECTED("expected"),
        WITH_US("with us"),
        GIVEN_BACK("given back"),
        LOST("lost"),
        /** Lost or never sent; the shop's own is built on, as the customer agreed. */
        REPLACED("replaced by the shop's");

        private final String word;

        State(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    OwnPart(long orderId, OwnPartDetails details) {
        this.orderId = orderId;
        this.what = details.what();
        this.description = details.description();
        this.dueOn = details.dueOn();
        this.state = State.EXPECTED;
    }

    void arrive(long found, Act act) {
        refuseUnless(State.EXPECTED, "was not booked in");
        state = State.WITH_US;
        measuredWords = found;
        arrivedAt = act.at();
        arrivedBy = act.by();
    }

    void giveBack(long why, Act act) {
        refuseUnless(State.WITH_US, "was not given back");
        end(State.GIVEN_BACK, why, act);
    }

    void lose(long why, Act act) {
        refuseUnless(State.WITH_US, "was not entered as lost");
        end(State.LOST, why, act);
    }

    /** @param agreed what the customer agreed to, and how */
    void replace(long agreed, Act act) {
        if (state != State.EXPECTED && state != State.LOST) {
            throw Refusal.state(
                    "The customer's " + what + " was not replaced.",
                    "It is " + state.word() + ".",
                    state == State.WITH_US
                            ? "Give it back first, or enter it as lost."
                            : "Look at the part's line on the order.");
        }
        state = State.REPLACED;
        agreedWords = agreed;
        replacedAt = act.at();
        replacedBy = act.by();
    }

    private void end(State end, long why, Act act) {
        state = end;
        endedWords = why;
        endedAt = act.at();
        endedBy = act.by();
    }

    private void refuseUnless(State wanted, String undone) {
        if (state != wanted) {
            throw Refusal.state(
                    "The customer's " + what + " " + undone + ".",
                    "It is " + state.word() + ".",
                    "Look at the part's line on the order.");
        }
    }

    long id() {
        return id;
    }

    long orderId() {
        return orderId;
    }

    String what() {
        return what;
    }

    String description() {
        return description;
    }

    @Nullable
    LocalDate dueOn() {
        return dueOn;
    }

    State state() {
        return state;
    }

    @Nullable
    Instant arrivedAt() {
        return arrivedAt;
    }

    @Nullable
    Long arrivedBy() {
        return arrivedBy;
    }

    @Nullable
    Long measuredWords() {
        return measuredWords;
    }

    @Nullable
    Instant replacedAt() {
        return replacedAt;
    }

    @Nullable
    Long replacedBy() {
        return replacedBy;
    }

    @Nullable
    Long agreedWords() {
        return agreedWords;
    }

    @Nullable
    Instant endedAt() {
        return endedAt;
    }

    @Nullable
    Long endedBy() {
        return endedBy;
    }

    @Nullable
    Long endedWords() {
        return endedWords;
    }
}
