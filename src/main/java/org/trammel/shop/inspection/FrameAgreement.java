package org.trammel.shop.inspection;

import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;
import org.trammel.shop.people.AgreementInRole;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;

/** Somebody agreed in a role to what was put forward for a frame. */
@Entity
@Immutable
@Table(name = "rejudged_frame_agreement")
class FrameAgreement extends AgreementInRole {

    protected FrameAgreement() {}

    FrameAgreement(FrameDecision to, Role as, Act act) {
        super(to, as, act);
    }
}
