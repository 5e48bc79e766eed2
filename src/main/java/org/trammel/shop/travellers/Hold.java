package org.trammel.shop.travellers;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;

/** A frame, a part or an operation that may not pass a gate, why, and who lifted it. */
@Entity
@Table(name = "hold")
class Hold {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private String serial;

    @Column(name = "traveller_id")
    private @Nullable Long travellerId;

    @Column(name = "operation_id")
    private @Nullable Long operationId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private HoldScope scope;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private HoldReason reason;

    private String words;

    private String source;

    @Column(name = "placed_by")
    private long placedBy;

    @Column(name = "placed_at")
    private Instant placedAt;

    private String causers;

    @Column(name = "agreed_by")
    private String agreedBy;

    @Column(name = "lifted_by")
    private @Nullable Long liftedBy;

    @Column(name = "lifted_at")
    private @Nullable Instant liftedAt;

    @Column(name = "lift_words")
    private @Nullable String liftWords;

    protected Hold() {}

    Hold(Traveller traveller, HoldScope scope, @Nullable Long operationId, HoldReason reason, Origin origin) {
        this.serial = traveller.serial();
        this.travellerId = scope == HoldScope.FRAME ? null : Long.valueOf(traveller.id());
        this.operationId = operationId;
        this.scope = scope;
        this.reason = reason;
        this.words = origin.words();
        this.source = origin.source();
        this.placedBy = origin.by();
        this.placedAt = origin.at();
        this.causers = ids(origin.causers());
        this.agreedBy = "";
    }

    /** Who placed a hold and what for; causers are the people who took part in what it is about. */
    record Origin(String words, String source, long by, Instant at, Set<Long> causers) {}

    @Version
    private long version;

    /** One of the people who must agree has agreed. */
    void agree(long personId) {
        Set<Long> all = new TreeSet<>(agreed());
        all.add(personId);
        agreedBy = ids(all);
    }

    void lift(long by, Instant at, String words) {
        if (!open()) {
            throw Refusal.stale(
                    "The hold cannot be lifted.", "It was lifted before.", "Open the frame again to see its holds.");
        }
        liftedBy = by;
        liftedAt = at;
        liftWords = words;
    }

    /** The operation goes on or is done, and the hold stays: from now on it holds what follows in the part. */
    void reachOn() {
        if (scope == HoldScope.OPERATION) {
            scope = HoldScope.PART;
        }
    }

    boolean open() {
        return liftedAt == null;
    }

    boolean covers(Traveller traveller, @Nullable Operation operation) {
        return switch (scope) {
            case FRAME -> true;
            case PART -> travellerId != null && (travellerId == traveller.id() || traveller.frame());
            case OPERATION -> operation != null && operationId != null && operationId == operation.id();
        };
    }

    Set<Long> causedBy() {
        return read(causers);
    }

    Set<Long> agreed() {
        return read(agreedBy);
    }

    private static String ids(Set<Long> ids) {
        return ids.stream().sorted().map(String::valueOf).collect(Collectors.joining(","));
    }

    private static Set<Long> read(String ids) {
        return ids.isEmpty()
                ? Set.of()
                : Arrays.stream(ids.split(",")).map(Long::valueOf).collect(Collectors.toSet());
    }

    long id() {
        return id;
    }

    String serial() {
        return serial;
    }

    @Nullable
    Long travellerId() {
        return travellerId;
    }

    @Nullable
    Long operationId() {
        return operationId;
    }

    HoldScope scope() {
        return scope;
    }

    HoldReason reason() {
        return reason;
    }

    String words() {
        return words;
    }

    String source() {
        return source;
    }

    long placedBy() {
        return placedBy;
    }

    Instant placedAt() {
        return placedAt;
    }

    String causers() {
        return causers;
    }

    String agreedBy() {
        return agreedBy;
    }

    @Nullable
    Long liftedBy() {
        return liftedBy;
    }

    @Nullable
    Instant liftedAt() {
        return liftedAt;
    }

    @Nullable
    String liftWords() {
        return liftWords;
    }
}
