package org.trammel.shop.inspection;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.trammel.shop.people.Deciders;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;

/** Somebody agreed in a role to what was put forward for a frame. Only added to. */
@Entity
@Immutable
@Table(name = "rejudged_frame_agreement")
class FrameAgreement {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(name = "decision_id")
    private long decisionId;

    @Column(name = "person_id")
    private long personId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    @Column(name = "agreed_as")
    private Role agreedAs;

    private Instant at;

    @Column(name = "act_id")
    private UUID actId;

    protected FrameAgreement() {}

    FrameAgreement(FrameDecision to, Role as, Act act) {
        this.decisionId = to.id();
        this.personId = act.by();
        this.agreedAs = as;
        this.at = act.at();
        this.actId = act.id();
    }

    long decisionId() {
        return decisionId;
    }

    Deciders.Said said() {
        return new Deciders.Said(personId, agreedAs);
    }

    Instant at() {
        return at;
    }
}
