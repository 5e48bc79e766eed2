package org.trammel.shop.alignment;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How far to push, in words for whoever stands at the frame. It is a proposal; whether a push may be made is decided
 * elsewhere.
 *
 * @param toTakeOut what is to be taken out, and what that is where it is pushed
 * @param first what to push first; null where the history proposes none
 * @param why it proposes none; empty where it does
 * @param floor what only springs back, by bending; or why that is not computed
 * @param note what holds for the metal
 * @param history pushes on such a tube
 */
public record PushAdvice(
        String toTakeOut, @Nullable First first, String why, String floor, String note, List<Told> history) {

    public PushAdvice {
        history = List.copyOf(history);
    }

    /**
     * A push from below.
     *
     * @param push_mm to begin with
     * @param leaves_mm what it is expected to leave
     * @param whole_mm expected to bring all of it
     * @param low_mm the push that brings all of it lies between this
     * @param high_mm and this
     */
    public record First(double push_mm, double leaves_mm, double whole_mm, double low_mm, double high_mm) {}

    /** A push that was done, in mm at one place. */
    public record Told(double push_mm, double set_mm) {}
}
