package org.trammel.shop.materials;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Objects;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/** A lot; its verbs refuse from any state they have no business in. */
@Entity
@Table(name = "lot")
class LotRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(nullable = false)
    private String code;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private LotKind kind;

    @Column(nullable = false)
    private String what;

    private @Nullable String metal;

    @Column(name = "class_code")
    private @Nullable String materialClass;

    @Column(nullable = false)
    private String grade;

    @Column(nullable = false)
    private String heat;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(name = "reserved_for")
    private @Nullable MetalFamily reservedFor;

    @Column(nullable = false)
    private String supplier;

    @Column(name = "received_on", nullable = false)
    private LocalDate receivedOn;

    @Column(name = "expires_on")
    private @Nullable LocalDate expiresOn;

    @Column(name = "certificate_type", nullable = false)
    private String certificateType;

    @Column(nullable = false)
    private String certificate;

    @Column(name = "certificate_file")
    private @Nullable String certificateFile;

    private @Nullable BigDecimal quantity;

    @Column(name = "quantity_left")
    private @Nullable BigDecimal quantityLeft;

    @Column(nullable = false)
    private String unit;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(nullable = false)
    private LotState state;

    @Column(name = "state_reason", nullable = false)
    private String stateReason;

    @Column(name = "state_since", nullable = false)
    private Instant stateSince;

    /** Kept apart from the state: a lot that was used up can still be found bad, and is used up again when cleared. */
    @Column(name = "used_up", nullable = false)
    private boolean usedUp;

    @Column(name = "received_by", nullable = false)
    private long receivedBy;

    @Version
    private long version;

    protected LotRow() {}

    LotRow(NewLot entry, Act act) {
        this.code = entry.code();
        this.certificateType = "";
        this.certificate = "";
        this.state = LotState.QUARANTINED;
        this.stateReason = "received, certificate to be checked";
        this.stateSince = act.at();
        this.receivedBy = act.by();
        describe(entry);
    }

    /** Corrects what was entered, as long as nothing was decided on it. */
    void correct(NewLot entry) {
        refuseUnless("corrected", LotState.QUARANTINED);
        describe(entry);
    }

    private void describe(NewLot entry) {
        this.kind = entry.kind();
        this.what = entry.what();
        this.metal = entry.metal();
        this.materialClass = entry.materialClass();
        this.grade = entry.grade();
        this.heat = entry.heat();
        this.reservedFor = entry.reservedFor();
        this.supplier = entry.supplier();
        this.receivedOn = entry.receivedOn();
        this.expiresOn = entry.expiresOn();
        BigDecimal used = quantity == null || quantityLeft == null ? BigDecimal.ZERO : quantity.subtract(quantityLeft);
        this.quantity = entry.quantity();
        this.quantityLeft = entry.quantity() == null ? null : entry.quantity().subtract(used);
        this.unit = entry.unit();
    }

    void certify(String type, String number, @Nullable String file) {
        refuseUnless("given a certificate", LotState.QUARANTINED, LotState.RELEASED, LotState.BLOCKED);
        this.certificateType = type;
        this.certificate = number;
        this.certificateFile = file == null ? certificateFile : file;
    }

    void release(LocalDate today, Instant at) {
        refuseUnless("released", LotState.QUARANTINED, LotState.BLOCKED);
        if (!lot().certified()) {
            throw Refusal.state(code + " was not released.", "It has no certificate.", "Record the certificate first.");
        }
        if (kind.metallic() && heat.isEmpty()) {
            throw Refusal.state(
                    code + " was not released.",
                    "It has no heat number, so its certificate cannot be told to be its own.",
                    "Enter the heat number that stands on the certificate and on the material.");
        }
        refuseExpired("released", today);
        turn(usedUp ? LotState.USED_UP : LotState.RELEASED, "", at);
    }

    void quarantine(String reason, Instant at) {
        refuseUnless("quarantined", LotState.RELEASED);
        turn(LotState.QUARANTINED, reason, at);
    }

    void block(String reason, Instant at) {
        refuseUnless("blocked", LotState.QUARANTINED, LotState.RELEASED, LotState.USED_UP);
        turn(LotState.BLOCKED, reason, at);
    }

    void useUp(String reason, Instant at) {
        refuseUnless("written off as used up", LotState.RELEASED);
        usedUp = true;
        turn(LotState.USED_UP, reason, at);
    }

    /** Refuses unless a piece may be taken from it today. */
    void refuseUnlessIssuable(LocalDate today) {
        refuseUnless("issued", LotState.RELEASED);
        refuseExpired("issued", today);
    }

    /** Takes a piece from a counted lot. The last piece uses it up. */
    void take(BigDecimal amount, Instant at) {
        BigDecimal left = quantityLeft;
        if (left == null) {
            return;
        }
        if (amount.compareTo(left) > 0) {
            throw Refusal.input(
                    "quantity",
                    code + " was not issued.",
                    "It holds " + bare(left) + " " + unit + ", " + bare(amount) + " " + unit + " are wanted.",
                    "Take a remnant or another lot, and record the rest as used up if it is not there.");
        }
        quantityLeft = left.subtract(amount);
        if (quantityLeft.signum() == 0) {
            useUp("the last of it was issued", at);
        }
    }

    static String bare(BigDecimal number) {
        return Objects.requireNonNull(plain(number)).toPlainString();
    }

    /** A figure without the zeros its column adds. */
    static @Nullable BigDecimal plain(@Nullable BigDecimal number) {
        if (number == null) {
            return null;
        }
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    private void refuseExpired(String done, LocalDate today) {
        if (lot().expired(today)) {
            throw Refusal.state(
                    code + " was not " + done + ".",
                    "Its last day was " + expiresOn + "; it is " + today + ".",
                    "Take another lot. The QA lead decides what becomes of this one.");
        }
    }

    private void turn(LotState next, String reason, Instant at) {
        state = next;
        stateReason = reason;
        stateSince = at;
    }

    private void refuseUnless(String done, LotState first, LotState... more) {
        if (!EnumSet.of(first, more).contains(state)) {
            throw Refusal.state(
                    code + " was not " + done + ".",
                    "It is " + state.word() + (stateReason.isEmpty() ? "." : ": " + stateReason + "."),
                    switch (state) {
                        case QUARANTINED ->
                            "Let the QA lead check its certificate and release it, or take another lot.";
                        case RELEASED -> "Quarantine it first, with the reason.";
                        case BLOCKED -> "Take another lot. The QA lead alone lets this one be used again.";
                        case USED_UP -> "Take another lot.";
                    });
        }
    }

    long id() {
        return id;
    }

    String code() {
        return code;
    }

    LotKind kind() {
        return kind;
    }

    LotState state() {
        return state;
    }

    String unit() {
        return unit;
    }

    boolean counted() {
        return quantity != null;
    }

    long version() {
        return version;
    }

    Lot lot() {
        return new Lot(
                id == null ? 0 : id,
                code,
                kind,
                what,
                metal,
                materialClass,
                grade,
                heat,
                reservedFor,
                supplier,
                receivedOn,
                expiresOn,
                certificateType,
                certificate,
                certificateFile,
                plain(quantity),
                plain(quantityLeft),
                unit,
                state,
                stateReason,
                stateSince,
                version);
    }
}
