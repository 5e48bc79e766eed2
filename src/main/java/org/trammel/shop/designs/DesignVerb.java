package org.trammel.shop.designs;

import static org.trammel.shop.designs.DesignState.APPROVED;
import static org.trammel.shop.designs.DesignState.CHECKED;
import static org.trammel.shop.designs.DesignState.DRAFT;
import static org.trammel.shop.designs.DesignState.RELEASED;
import static org.trammel.shop.designs.DesignState.SENT;
import static org.trammel.shop.designs.DesignState.SUPERSEDED;
import static org.trammel.shop.designs.DesignState.WITHDRAWN;

import java.util.EnumSet;
import java.util.Set;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;

/** What can be done to a design revision, from which states and by whom. */
enum DesignVerb {
    CHANGE(
            "was not changed",
            "Only a draft is changed.",
            "Begin the next revision from it and say why.",
            EnumSet.of(DRAFT),
            Role.OWNER,
            Role.QA_LEAD),
    SEND(
            "was not sent to the customer",
            "Only a draft is sent.",
            "Begin the next revision and send that.",
            EnumSet.of(DRAFT),
            Role.OWNER),
    APPROVE(
            "was not approved",
            "The customer approves the revision that was sent last.",
            "Send a revision to the customer, or enter the approval at the one that was sent last.",
            EnumSet.of(SENT),
            Role.OWNER),
    ANSWER(
            "kept its gate answers",
            "The checks of the gate are answered before the revision is released.",
            "Begin the next revision and answer its checks.",
            EnumSet.of(DRAFT, SENT, APPROVED, CHECKED),
            Role.OWNER,
            Role.QA_LEAD),
    SIGN(
            "was not signed",
            "The gate is signed when the customer has approved.",
            "Enter the customer's approval first.",
            EnumSet.of(APPROVED),
            Role.OWNER,
            Role.QA_LEAD),
    RELEASE(
            "was not released",
            "A revision is released when owner and QA lead have signed its gate.",
            "Have the gate signed first.",
            EnumSet.of(CHECKED),
            Role.OWNER,
            Role.QA_LEAD),
    WITHDRAW(
            "was not withdrawn",
            "A revision is withdrawn before its release.",
            "Begin the next revision; its release supersedes this one.",
            EnumSet.of(DRAFT, SENT, APPROVED, CHECKED),
            Role.OWNER),
    REVISE(
            "was not revised",
            "A draft is not copied while it can be changed.",
            "Change the draft.",
            EnumSet.of(SENT, APPROVED, CHECKED, RELEASED, SUPERSEDED, WITHDRAWN),
            Role.OWNER,
            Role.QA_LEAD),
    NOTE(
            "got no note",
            "",
            "",
            EnumSet.allOf(DesignState.class),
            Role.OWNER,
            Role.QA_LEAD,
            Role.ALIGNER,
            Role.WELDER,
            Role.HEAT_TREATER,
            Role.STATION_WORKER,
            Role.APPRENTICE);

    private final String undone;
    private final String rule;
    private final String instead;
    private final Set<DesignState> from;
    private final Role[] by;

    DesignVerb(String undone, String rule, String instead, Set<DesignState> from, Role... by) {
        this.undone = undone;
        this.rule = rule;
        this.instead = instead;
        this.from = from;
        this.by = by;
    }

    Role[] by() {
        return by.clone();
    }

    boolean allowedFrom(DesignState state) {
        return from.contains(state);
    }

    /** The first part of every refusal of this verb. */
    String undone(String letter) {
        return "Revision " + letter + " " + undone + ".";
    }

    void refuseUnless(String letter, DesignState state) {
        if (!from.contains(state)) {
            throw Refusal.state(undone(letter), "It is " + state.word() + ". " + rule, instead);
        }
    }
}
