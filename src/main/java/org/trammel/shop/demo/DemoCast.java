package org.trammel.shop.demo;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.trammel.shop.people.Role;

/** The invented crew, with the secrets it signs on by in the demo and nowhere else. */
final class DemoCast {

    /** One of the crew. */
    record Member(String initials, String name, Set<Role> roles, String pin) {}

    static final String OWNER_PASSWORD = "tidewater lantern";
    static final String QA_PASSWORD = "granite mandrel";

    static final List<Member> ALL = List.of(
            new Member("ME", "Marit Ekdalen", Set.of(Role.OWNER), "402917"),
            new Member("TR", "Tobiah Renn", Set.of(Role.QA_LEAD), "731580"),
            new Member("IC", "Ines Callowe", Set.of(Role.WELDER), "264809"),
            new Member("PW", "Piotr Wendelin", Set.of(Role.WELDER), "915036"),
            new Member("HS", "Hanneke Sorrel", Set.of(Role.WELDER), "580471"),
            new Member("JA", "Jonna Askeby", Set.of(Role.STATION_WORKER), "347162"),
            new Member("RH", "Rasmus Hodell", Set.of(Role.HEAT_TREATER), "608295"),
            new Member("SB", "Sunniva Bratte", Set.of(Role.ALIGNER), "179430"),
            new Member("LM", "Leila Marchand", Set.of(Role.STATION_WORKER), "853607"),
            new Member("DO", "Davit Orenko", Set.of(Role.STATION_WORKER), "496281"),
            new Member("AK", "Ayla Korpi", Set.of(Role.APPRENTICE), "720594"));

    static final Map<String, List<String>> TABLETS = tablets();

    private DemoCast() {}

    private static Map<String, List<String>> tablets() {
        Map<String, List<String>> all = new LinkedHashMap<>();
        all.put("T1", List.of("1", "2"));
        all.put("T2", List.of("3"));
        all.put("T3", List.of("3"));
        all.put("T4", List.of("4", "6"));
        all.put("T5", List.of("5"));
        all.put("T6", List.of("7", "8"));
        all.put("T7", List.of("9"));
        return all;
    }
}
