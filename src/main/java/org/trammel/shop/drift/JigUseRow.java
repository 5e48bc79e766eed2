package org.trammel.shop.drift;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;
import org.trammel.shop.travellers.FrameSheet;

/** A frame was set up in a jig. Only added to. */
@Entity
@Table(name = "jig_use")
class JigUseRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "traveller_id")
    private long travellerId;

    private String serial;
    private String part;

    @Column(name = "jig_code")
    private String jigCode;

    @Column(name = "person_id")
    private long personId;

    private Instant at;

    @Column(name = "act_id")
    private UUID actId;

    private @Nullable String reason;

    protected JigUseRow() {}

    /** @param reason why it is another jig than the one it was read in; null where it is not */
    JigUseRow(Act act, FrameSheet.Head head, String jigCode, @Nullable String reason) {
        this.travellerId = head.travellerId();
        this.serial = head.serial();
        this.part = head.part();
        this.jigCode = jigCode;
        this.reason = reason;
        this.personId = act.by();
        this.at = act.at();
        this.actId = act.id();
    }

    long travellerId() {
        return travellerId;
    }

    String serial() {
        return serial;
    }

    String part() {
        return part;
    }

    String jigCode() {
        return jigCode;
    }

    long personId() {
        return personId;
    }

    Instant at() {
        return at;
    }
}
