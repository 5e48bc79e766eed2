package org.trammel.shop.welding;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * By what the welds are looked at.
 *
 * @param level quality level: D, C or B; empty where no look is asked for
 * @param otherLevels nodes of another level, one to a line: the level, a colon, words that stand in the names of the nodes
 * @param limits code of the table of limits
 */
@Embeddable
public record LookRules(
        @Column(name = "level", nullable = false) String level,
        @Column(name = "other_levels", nullable = false) String otherLevels,
        @Column(name = "limits", nullable = false) String limits) {

    public LookRules {
        level = level == null ? "" : level;
        otherLevels = otherLevels == null ? "" : otherLevels;
        limits = limits == null ? "" : limits;
    }

    static final List<String> LEVELS = List.of("B", "C", "D");

    boolean asked() {
        return !level.isEmpty();
    }

    /** The level of a node: the strictest that a line gives it, else that of the procedure. */
    String levelOf(String node) {
        String small = node.toLowerCase(Locale.ROOT);
        return otherLevels
                .lines()
                .filter(line -> line.contains(":"))
                .filter(line -> Arrays.stream(
                                line.substring(line.indexOf(':') + 1).split(","))
                        .map(words -> words.strip().toLowerCase(Locale.ROOT))
                        .anyMatch(words -> !words.isEmpty() && small.contains(words)))
                .map(line -> line.substring(0, line.indexOf(':')).strip())
                .min(java.util.Comparator.naturalOrder())
                .orElse(level);
    }
}
