package org.trammel.calc.scheduling;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which blank is cut from which bar.
 *
 * @param bars in the order they are cut, those with the most urgent blank first
 * @param shares what is known of the plan, kind by kind
 */
public record CutPlan(List<CutBar> bars, List<Share> shares) {

    public CutPlan {
        bars = List.copyOf(bars);
        shares = List.copyOf(shares);
    }

    /**
     * The plan of one section and alloy.
     *
     * @param newStock_mm length of the new bars that are opened, remnants apart
     * @param leastNewStock_mm what no plan can stay below
     * @param proven whether no plan opens less: every one was looked at, or the least is reached
     */
    public record Share(TubeKind kind, double newStock_mm, double leastNewStock_mm, boolean proven) {}

    /** What goes back to the rack, each with its lot. */
    public List<TubeStock> remnants() {
        return bars.stream()
                .filter(CutBar::kept)
                .map(bar -> new TubeStock(bar.stock().kind(), bar.stock().lot(), bar.offcut_mm(), 1, true))
                .toList();
    }

    /** Of what is used up, the part that becomes no tube, in percent: (kerf + scrap) / (opened − kept) · 100. */
    public double waste_percent() {
        double used = 0;
        double lost = 0;
        for (CutBar bar : bars) {
            double scrap = bar.kept() ? 0 : bar.offcut_mm();
            lost += bar.kerf_mm() + scrap;
            used += bar.stock().length_mm() - (bar.kept() ? bar.offcut_mm() : 0);
        }
        return used > 0 ? 100 * lost / used : 0;
    }

    /** The lots of each frame that cannot be kept to one lot for one kind of tube. */
    public Map<String, Set<String>> lotsOfSplitFrames() {
        Map<String, Map<TubeKind, Set<String>>> lots = new LinkedHashMap<>();
        for (CutBar bar : bars) {
            for (Blank blank : bar.blanks()) {
                lots.computeIfAbsent(blank.frame(), frame -> new LinkedHashMap<>())
                        .computeIfAbsent(blank.kind(), kind -> new LinkedHashSet<>())
                        .add(bar.stock().lot());
            }
        }
        Map<String, Set<String>> split = new LinkedHashMap<>();
        lots.forEach((frame, kinds) -> kinds.values().stream()
                .filter(several -> several.size() > 1)
                .forEach(several -> split.computeIfAbsent(frame, none -> new LinkedHashSet<>())
                        .addAll(several)));
        return split;
    }
}
