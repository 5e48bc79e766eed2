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
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;

/** One frame, a part of one, or a station check, on its way through frozen operations. */
@Entity
@Table(name = "traveller")
class Traveller {

    /** Order number of travellers that belong to no order: the daily station checks. */
    static final String NO_ORDER = "-";

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private String serial;
    private String part;

    @Column(name = "parent_id")
    private @Nullable Long parentId;

    @Column(name = "order_id")
    private @Nullable Long orderId;

    @Column(name = "order_number")
    private String orderNumber;

    @Column(name = "design_revision_id")
    private @Nullable Long designRevisionId;

    @Column(name = "route_revision_id")
    private long routeRevisionId;

    private String letter;

    @Column(name = "copy_number")
    private int copyNumber;

    private String metal;
    private String kind;
    private String description;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private TravellerState state;

    @Column(name = "state_reason")
    private @Nullable String stateReason;

    @Column(name = "released_at")
    private Instant releasedAt;

    @Column(name = "finished_at")
    private @Nullable Instant finishedAt;

    @Column(name = "shipped_at")
    private @Nullable Instant shippedAt;

    @Column(name = "current_operation_id")
    private @Nullable Long currentOperationId;

    @Column(name = "current_code")
    private @Nullable String currentCode;

    @Column(name = "current_station")
    private @Nullable String currentStation;

    @Version
    private long version;

    protected Traveller() {}

    Traveller(Origin origin, Frozen frozen, Instant at) {
        this.serial = origin.serial();
        this.part = origin.part();
        this.parentId = origin.parentId();
        this.orderId = origin.orderId();
        this.orderNumber = origin.orderNumber();
        this.designRevisionId = origin.designRevisionId();
        this.letter = origin.letter();
        this.description = origin.description();
        this.routeRevisionId = frozen.routeRevisionId();
        this.metal = frozen.metal();
        this.kind = frozen.kind();
        this.state = TravellerState.RELEASED;
        this.releasedAt = at;
    }

    /** Whose traveller this is. */
    record Origin(
            String serial,
            String part,
            @Nullable Long parentId,
            @Nullable Long orderId,
            String orderNumber,
            @Nullable Long designRevisionId,
            String letter,
            String description) {}

    /** What it was frozen from. */
    record Frozen(long routeRevisionId, String metal, String kind) {}

    /** The same part once more, made anew after this one was scrapped. */
    Traveller anew(Instant at) {
        Traveller copy = new Traveller(
                new Origin(serial, part, parentId, orderId, orderNumber, designRevisionId, letter, description),
                new Frozen(routeRevisionId, metal, kind),
                at);
        copy.copyNumber = copyNumber + 1;
        return copy;
    }

    /** The operation at hand; null when all are done. */
    void standsAt(@Nullable Operation operation) {
        currentOperationId = operation == null ? null : operation.id();
        currentCode = operation == null ? null : operation.code();
        currentStation = operation == null ? null : operation.station();
    }

    void begin() {
        if (state == TravellerState.RELEASED) {
            state = TravellerState.IN_WORK;
        }
    }

    void finish(Instant at) {
        require(state == TravellerState.IN_WORK || state == TravellerState.RELEASED, "finished");
        state = TravellerState.FINISHED;
        finishedAt = at;
    }

    /** An operation was opened again, or added, after the last one was done. */
    void takeUpAgain() {
        if (state == TravellerState.FINISHED) {
            state = TravellerState.IN_WORK;
            finishedAt = null;
        }
    }

    void ship(Instant at) {
        require(state == TravellerState.FINISHED, "shipped");
        state = TravellerState.SHIPPED;
        shippedAt = at;
    }

    void scrap(String reason) {
        require(state.open(), "scrapped");
        state = TravellerState.SCRAPPED;
        stateReason = reason;
        standsAt(null);
    }

    void withdraw(String reason) {
        require(state.open(), "withdrawn");
        state = TravellerState.WITHDRAWN;
        stateReason = reason;
        standsAt(null);
    }

    /** Refuses work on a traveller that is shipped, scrapped or withdrawn. */
    void requireOpen(String deed) {
        require(state.open(), deed);
    }

    private void require(boolean allowed, String deed) {
        if (!allowed) {
            throw Refusal.state(
                    "Frame " + mark() + " cannot be " + deed + ".",
                    "Its traveller, revision " + letter + ", is " + state.word()
                            + (stateReason == null ? "." : ": " + stateReason + "."),
                    state == TravellerState.WITHDRAWN
                            ? "Open the frame again: the traveller of the newer revision takes over."
                            : "Open the frame's story to see what happened; a new order starts a new frame.");
        }
    }

    boolean frame() {
        return part.isEmpty();
    }

    String chain() {
        return orderNumber.equals(NO_ORDER) ? Chains.SHOP : Chains.frame(serial);
    }

    /** What people call it: the last three digits and the check character, and the part. */
    String mark() {
        return orderNumber.equals(NO_ORDER) ? serial : Marks.of(serial, part);
    }

    long id() {
        return id;
    }

    String serial() {
        return serial;
    }

    String part() {
        return part;
    }

    @Nullable
    Long parentId() {
        return parentId;
    }

    @Nullable
    Long orderId() {
        return orderId;
    }

    String orderNumber() {
        return orderNumber;
    }

    @Nullable
    Long designRevisionId() {
        return designRevisionId;
    }

    long routeRevisionId() {
        return routeRevisionId;
    }

    String letter() {
        return letter;
    }

    int copyNumber() {
        return copyNumber;
    }

    String metal() {
        return metal;
    }

    String kind() {
        return kind;
    }

    String description() {
        return description;
    }

    TravellerState state() {
        return state;
    }

    @Nullable
    String stateReason() {
        return stateReason;
    }

    Instant releasedAt() {
        return releasedAt;
    }

    @Nullable
    Instant finishedAt() {
        return finishedAt;
    }

    @Nullable
    Instant shippedAt() {
        return shippedAt;
    }

    @Nullable
    Long currentOperationId() {
        return currentOperationId;
    }

    @Nullable
    String currentCode() {
        return currentCode;
    }

    @Nullable
    String currentStation() {
        return currentStation;
    }
}
