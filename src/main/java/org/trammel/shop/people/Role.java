package org.trammel.shop.people;

/** What somebody may decide and do in the shop. One person may hold several. */
public enum Role {
    OWNER,
    QA_LEAD,
    /** Authorised to measure alignment as deciding and to cold-set. */
    ALIGNER,
    WELDER,
    HEAT_TREATER,
    STATION_WORKER,
    /** May tick steps, may not sign a hold point or stand as a witness. */
    APPRENTICE,
    /** Reads everything but personal data; does nothing. */
    AUDITOR;

    /** The word people read. */
    public String word() {
        return RoleWords.of(this);
    }

    /** The authority Spring Security knows this role by. */
    public String authority() {
        return "ROLE_" + name();
    }
}
