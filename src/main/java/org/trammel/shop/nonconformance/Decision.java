package org.trammel.shop.nonconformance;

import java.util.List;
import org.trammel.shop.people.Deciders;
import org.trammel.shop.people.Role;

/** What becomes of something that does not conform, in the words of ISO 9000. */
public enum Decision {
    REWORK("rework", List.of(Role.QA_LEAD)),
    REPAIR("repair", List.of(Role.QA_LEAD, Role.OWNER)),
    CONCESSION("concession", Deciders.OF_WHAT_STAYS_AS_IT_IS),
    /** The owner agrees where it costs more than the shop's limit. */
    SCRAP("scrap", List.of(Role.QA_LEAD)),
    RETURN("return to supplier", List.of(Role.QA_LEAD)),
    /** It was none after all: read again it conforms, or what was seen was nothing. */
    CLEARED("cleared, it conforms", List.of(Role.QA_LEAD));

    private final String word;
    private final List<Role> agree;

    Decision(String word, List<Role> agree) {
        this.word = word;
        this.agree = agree;
    }

    public String word() {
        return word;
    }

    /** Roles that must agree at the least. */
    public List<Role> agree() {
        return agree;
    }

    /** Name of the mark a screen sets beside it. */
    public String mark() {
        return switch (this) {
            case REWORK, RETURN -> "rework";
            case REPAIR -> "repair";
            case CONCESSION -> "concession";
            case SCRAP -> "scrap";
            case CLEARED -> "conforming";
        };
    }

    /** True if what was done since is done over, unless it is said to be valid still. */
    boolean outdatesWhatFollowed() {
        return loops() || this == SCRAP;
    }

    /** True if operations are done over. */
    boolean loops() {
        return this == REWORK || this == REPAIR || this == RETURN;
    }
}
