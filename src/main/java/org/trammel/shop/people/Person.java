package org.trammel.shop.people;

import java.util.Set;

/**
 * Somebody who works here, or did.
 *
 * @param initials unique, never given to anybody else
 * @param name the name now; for an old record see {@link Crew#calledOverTime}
 * @param roles the roles in force today: a person's own, and those they stand in for while all holders are away
 * @param active whether they may sign on
 */
public record Person(long id, String initials, String name, Set<Role> roles, boolean active) {

    public Person {
        roles = Set.copyOf(roles);
    }

    public boolean is(Role role) {
        return roles.contains(role);
    }

    /** Whether the person holds any of these roles. */
    public boolean isAny(Role... any) {
        for (Role role : any) {
            if (roles.contains(role)) {
                return true;
            }
        }
        return false;
    }

    /** Whether this person may tick, read and write: everybody active but a mere auditor. */
    public boolean mayWork() {
        return active && roles.stream().anyMatch(role -> role != Role.AUDITOR);
    }

    /**
     * Whether this person may sign a hold or witness point at all. An apprentice may not, unless another role of
     * theirs may; who may sign which point is the route's to say.
     */
    public boolean maySign() {
        return active && roles.stream().anyMatch(role -> role != Role.AUDITOR && role != Role.APPRENTICE);
    }

    /** Whether this person may see names, addresses and other personal data. */
    public boolean seesPersonalData() {
        return mayWork();
    }
}
