package org.trammel.shop.travellers;

import java.util.List;
import java.util.stream.Collectors;
import org.trammel.shop.people.Role;

/** Why a frame is held, who may place such a hold, and who may lift it. */
public enum HoldReason {
    MATERIAL("material missing", List.of()),
    APPROVAL("customer approval", List.of(Role.OWNER)),
    CUSTOMER_PART("customer's own part", List.of()),
    NONCONFORMANCE("nonconformance", List.of(Role.QA_LEAD)),
    GAUGE_TRACE("gauge trace", List.of(Role.QA_LEAD)),
    OVEN_TRACE("oven trace", List.of(Role.QA_LEAD)),
    LOT_TRACE("lot trace", List.of(Role.QA_LEAD)),
    /** Lifted by the QA lead and the owner together. */
    SAFETY("safety", List.of(Role.QA_LEAD, Role.OWNER)),
    PAYMENT("payment", List.of(Role.OWNER));

    private final String word;
    private final List<Role> lifters;

    HoldReason(String word, List<Role> lifters) {
        this.word = word;
        this.lifters = lifters;
    }

    public String word() {
        return word;
    }

    /** Roles that must all agree to lift it; empty if any worker but an apprentice may. */
    public List<Role> lifters() {
        return lifters;
    }

    /** Who lifts it, as a screen says it. */
    public String liftedBy() {
        return lifters.isEmpty()
                ? "a worker, when it is there"
                : lifters.stream().map(role -> "the " + role.word()).collect(Collectors.joining(" and "))
                        + (barsCauser() ? ", not by whoever caused it" : "");
    }

    /** The same of a hold from a source: what has a sheet of its own is lifted by what is said there. */
    public String liftedBy(String source) {
        if (source.startsWith("RJ-")) {
            return "the frame's result in " + source;
        }
        if (source.startsWith("OT-")) {
            return "the frame's result in " + source;
        }
        return source.startsWith("NC-") ? "the decision on " + source : liftedBy();
    }

    /** True if what a hold comes from has a sheet of its own, where it is decided and lifted. */
    public static boolean decidedElsewhere(String source) {
        return source.startsWith("NC-") || source.startsWith("RJ-") || source.startsWith("OT-");
    }

    /** True if it says that something was found out, by a nonconformance or by a trace; an apprentice calls instead. */
    public boolean saysWhatWasFound() {
        return barsCauser() && this != SAFETY;
    }

    /** True if whoever caused the nonconformance, or did the work in question, may not lift it. */
    public boolean barsCauser() {
        return this == NONCONFORMANCE
                || this == LOT_TRACE
                || this == GAUGE_TRACE
                || this == OVEN_TRACE
                || this == SAFETY;
    }
}
