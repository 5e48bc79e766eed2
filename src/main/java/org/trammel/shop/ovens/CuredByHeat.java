package org.trammel.shop.ovens;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.CureWindow;
import org.trammel.calc.units.Answer;

/** Told by whoever sprays frames: what is on them that a run cures. */
public interface CuredByHeat {

    /**
     * What is on a frame.
     *
     * @param after when the run before it ended, which cured what was on it then; null if there was none
     * @param until when the run began
     */
    List<Coat> on(long travellerId, @Nullable Instant after, Instant until);

    /**
     * @param cure what its sheet asks, in words; empty where none was entered
     * @param window by its sheet; null where none was entered, or where it names no heat
     */
    record Coat(String lot, String cure, @Nullable Answer<CureWindow> window) {}
}
