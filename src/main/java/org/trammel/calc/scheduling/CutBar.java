package org.trammel.calc.scheduling;

import java.util.List;

/**
 * One bar with what is cut from it, all of one section, alloy and lot.
 *
 * @param stock which bar
 * @param blanks in the order they are cut, the most urgent first
 * @param cuts how many; one fewer than blanks where the last blank ends the bar
 * @param kerf_mm what the cuts take together
 * @param offcut_mm what is left
 * @param kept whether that goes back to the rack
 */
public record CutBar(TubeStock stock, List<Blank> blanks, int cuts, double kerf_mm, double offcut_mm, boolean kept) {

    public CutBar {
        blanks = List.copyOf(blanks);
    }

    /** The soonest its blanks are wanted. */
    int urgency() {
        return blanks.stream().mapToInt(Blank::urgency).min().orElse(Integer.MAX_VALUE);
    }
}
