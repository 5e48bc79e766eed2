package org.trammel.shop.people;

import jakarta.persistence.Column;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.MappedSuperclass;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.trammel.shop.records.Act;

/** Somebody agreed in a role to what was put forward. Only added to. */
@MappedSuperclass
public abstract class AgreementInRole {

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

    protected AgreementInRole() {}

    protected AgreementInRole(DecisionPutForward to, Role as, Act act) {
        this.decisionId = to.id();
        this.personId = act.by();
        this.agreedAs = as;
        this.at = act.at();
        this.actId = act.id();
    }

    public long decisionId() {
        return decisionId;
    }

    public Deciders.Said said() {
        return new Deciders.Said(personId, agreedAs);
    }

    public Instant at() {
        return at;
    }
}
