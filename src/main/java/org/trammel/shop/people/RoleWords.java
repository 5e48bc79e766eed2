package org.trammel.shop.people;

import java.util.Set;
import java.util.stream.Collectors;

/** The roles as the shop says them. */
final class RoleWords {

    private RoleWords() {}

    static String of(Role role) {
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

    static String all(Set<Role> roles) {
        return roles.isEmpty()
                ? "without a role"
                : roles.stream().sorted().map(RoleWords::of).collect(Collectors.joining(", "));
    }
}
