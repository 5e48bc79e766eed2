package org.trammel.shop.inspection;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;
import org.trammel.shop.travellers.Evidence;

/** One push that set a frame straighter while its window was open. Only added to. */
@Entity
@Table(name = "cold_set")
class ColdSet {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "characteristic_id")
    private long characteristicId;

    @Column(name = "operation_id")
    private long operationId;

    @Column(name = "traveller_id")
    private long travellerId;

    private int attempt;

    /** Null for one from before it was kept. */
    @Column(name = "characteristic_name")
    private @Nullable String characteristicName;

    private @Nullable String metal;

    @Column(name = "reading_before_id")
    private long readingBeforeId;

    /** Set aimed at, in the characteristic's unit, towards the nominal. */
    private BigDecimal amount;

    @Column(name = "push_mm")
    private @Nullable BigDecimal pushMm;

    private boolean late;

    @Column(name = "person_id")
    private long personId;

    private Instant at;

    @Column(name = "device_at")
    private @Nullable Instant deviceAt;

    @Column(name = "act_id")
    private UUID actId;

    protected ColdSet() {}

    ColdSet(
            Act act,
            Evidence.Wanted wanted,
            String metal,
            int attempt,
            long readingBeforeId,
            BigDecimal amount,
            @Nullable BigDecimal pushMm,
            boolean late) {
        this.characteristicId = wanted.characteristicId();
        this.operationId = wanted.operationId();
        this.travellerId = wanted.travellerId();
        this.characteristicName = wanted.name();
        this.metal = metal;
        this.attempt = attempt;
        this.readingBeforeId = readingBeforeId;
        this.amount = amount;
        this.pushMm = pushMm;
        this.late = late;
        this.personId = act.by();
        this.at = act.at();
        this.deviceAt = act.deviceAt();
        this.actId = act.id();
    }

    long id() {
        return id;
    }

    long characteristicId() {
        return characteristicId;
    }

    long operationId() {
        return operationId;
    }

    long travellerId() {
        return travellerId;
    }

    long readingBeforeId() {
        return readingBeforeId;
    }

    int attempt() {
        return attempt;
    }

    BigDecimal amount() {
        return amount;
    }

    @Nullable
    BigDecimal pushMm() {
        return pushMm;
    }

    boolean late() {
        return late;
    }

    long personId() {
        return personId;
    }

    Instant at() {
        return at;
    }
}
