package org.trammel.shop.people;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One line of what somebody may do and until when, as the list of the crew says it.
 *
 * @param words such as "weld aluminium"
 * @param until last day; null if it has no end
 * @param state what it is worth today
 * @param soon it ends within the days the shop warns before
 */
record MayDo(String words, @Nullable LocalDate until, Standing.State state, boolean soon) {

    private static final Map<String, String> METALS = Map.of("AL", "aluminium", "STEEL", "steel", "TI", "titanium");

    /** A condition of other qualifications; by itself it permits nothing. */
    private static final String NEAR_VISION = "NEAR-VISION";

    private static final Map<String, String> KINDS = Map.of(
            "BRAZE",
            "braze",
            "ALIGN",
            "cold-set",
            "PENETRANT",
            "test with penetrant",
            "VISUAL",
            "look over welds",
            "OVEN",
            "load ovens",
            "TORQUE",
            "torque",
            "CONDUCTIVITY",
            "check conductivity",
            NEAR_VISION,
            "near-vision test");

    /** What the qualifications of one person come to on a day: of each kind the one that lasts longest. */
    static List<MayDo> of(List<Qualification> held, LocalDate on, int warnDays) {
        Map<String, List<Qualification>> kinds =
                held.stream().collect(Collectors.groupingBy(Qualification::kind, TreeMap::new, Collectors.toList()));
        return kinds.entrySet().stream()
                .filter(kind -> !kind.getKey().equals(NEAR_VISION))
                .map(kind -> Crew.standing(kind.getValue(), kind.getKey(), on))
                .filter(standing ->
                        standing.state() != Standing.State.ENDED && standing.state() != Standing.State.NOT_HELD)
                .map(standing -> new MayDo(
                        words(standing.kind()), standing.until(), standing.state(), soon(standing, on, warnDays)))
                .sorted(Comparator.comparing(MayDo::until, Comparator.nullsLast(Comparator.naturalOrder())))
                .toList();
    }

    public boolean valid() {
        return state == Standing.State.VALID;
    }

    private static boolean soon(Standing standing, LocalDate on, int warnDays) {
        LocalDate until = standing.until();
        return standing.valid() && until != null && !until.isAfter(on.plusDays(warnDays));
    }

    /** A qualification as a refusal names it: in words, and with the code it is entered by. */
    static String named(String kind) {
        if (!known(kind)) {
            return "qualification " + kind;
        }
        String words = words(kind);
        return (kind.equals(NEAR_VISION) ? words : "qualification to " + words) + " (" + kind + ")";
    }

    /** Whether the kind says what it permits; what a shop's own routes ask for beside these only its code says. */
    private static boolean known(String kind) {
        String[] parts = kind.split(":");
        return parts[0].equals("WELD")
                ? parts.length == 1 || METALS.containsKey(parts[1])
                : KINDS.containsKey(parts[0]);
    }

    static String words(String kind) {
        if (!known(kind)) {
            return kind + ", of no known kind";
        }
        String[] parts = kind.split(":");
        if (parts[0].equals("WELD")) {
            return parts.length == 1 ? "weld" : "weld " + METALS.get(parts[1]);
        }
        return KINDS.get(parts[0]);
    }
}
