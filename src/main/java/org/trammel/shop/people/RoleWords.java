package org.trammel.shop.people;

import java.util.Set;
import java.util.stream.Collectors;

/** Roles as a sheet says them. */
public final class RoleWords {

    private RoleWords() {}

    public static String of(Role role) {
        return switch (role) {
            case OWNER -> "owner";
            case QA_LEAD -> "QA lead";
            case ALIGNER -> "aligner";
            case WELDER -> "welder";
            case HEAT_TREATER -> "heat-treater";
            case STATION_WORKER -> "station worker";
            case APPRENTICE -> "apprentice";
            case AUDITOR -> "auditor";
        };
    }

    public static String all(Set<Role> roles) {
        return roles.isEmpty()
                ? "without a role"
                : roles.stream().sorted().map(RoleWords::of).collect(Collectors.joining(", "));
    }
}
