package org.trammel.shop.inspection;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.trammel.shop.records.Act;
import org.trammel.shop.travellers.Evidence;

/** What was read back blind and asked about. Only added to. */
@Entity
@Immutable
@Table(name = "blind_attempt")
class BlindAttempt {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "characteristic_id")
    private long characteristicId;

    @Column(name = "operation_id")
    private long operationId;

    private String code;

    @Column(name = "read_as")
    private String readAs;

    private String why;

    @Column(name = "by_person")
    private long by;

    private Instant at;

    @Column(name = "act_id")
    private UUID actId;

    protected BlindAttempt() {}

    BlindAttempt(Evidence.Wanted wanted, String readAs, String why, Act act) {
        this.characteristicId = wanted.characteristicId();
        this.operationId = wanted.operationId();
        this.code = wanted.code();
        this.readAs = readAs;
        this.why = why;
        this.by = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    BlindAttempts.Told told() {
        return new BlindAttempts.Told(operationId, characteristicId, code, readAs, by, at);
    }

    String why() {
        return why;
    }
}
