package org.trammel.shop.travellers;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;

/** Somebody asked for somebody to look. */
@Entity
@Table(name = "shop_call")
class ShopCall {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "traveller_id")
    private @Nullable Long travellerId;

    @Column(name = "operation_id")
    private @Nullable Long operationId;

    private String words;

    @Column(name = "person_id")
    private long personId;

    private Instant at;

    @Column(name = "answered_by")
    private @Nullable Long answeredBy;

    @Column(name = "answered_at")
    private @Nullable Instant answeredAt;

    private @Nullable String answer;

    @Version
    private long version;

    protected ShopCall() {}

    ShopCall(@Nullable Long travellerId, @Nullable Long operationId, String words, long personId, Instant at) {
        this.travellerId = travellerId;
        this.operationId = operationId;
        this.words = words;
        this.personId = personId;
        this.at = at;
    }

    void answer(long by, Instant at, String words) {
        if (answeredBy != null) {
            throw Refusal.stale(
                    "The call cannot be answered.",
                    "It was answered before.",
                    "Open the calls again; nothing is left to do.");
        }
        answeredBy = by;
        answeredAt = at;
        answer = words;
    }

    long id() {
        return id;
    }

    @Nullable
    Long travellerId() {
        return travellerId;
    }

    @Nullable
    Long operationId() {
        return operationId;
    }

    String words() {
        return words;
    }

    long personId() {
        return personId;
    }

    Instant at() {
        return at;
    }

    @Nullable
    Long answeredBy() {
        return answeredBy;
    }

    @Nullable
    Instant answeredAt() {
        return answeredAt;
    }

    @Nullable
    String answer() {
        return answer;
    }
}
