package org.trammel.shop.backtraces;

import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;
import org.trammel.shop.people.AgreementInRole;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;

/** Somebody agreed in a role that a frame whose run is in doubt stays as it is. */
@Entity
@Immutable
@Table(name = "oven_trace_agreement")
class TraceAgreementRow extends AgreementInRole {

    protected TraceAgreementRow() {}

    TraceAgreementRow(TraceDecisionRow to, Role as, Act act) {
        super(to, as, act);
    }
}
