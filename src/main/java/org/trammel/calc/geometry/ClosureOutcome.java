package org.trammel.calc.geometry;

import java.util.List;
import org.trammel.calc.units.Answer;

/** What comes of closing a frame from what is given of it. Values are in millimetres, those of angles in radians. */
public sealed interface ClosureOutcome {

    /**
     * One frame.
     *
     * @param geometry the frame
     * @param surplus what was given beyond need and agrees, in the order of the dimensions
     * @param others other frames that fit what is given just as well but lie further from usual ones; empty for most
     */
    record Closed(FrameGeometry geometry, List<Surplus> surplus, List<FrameGeometry> others) implements ClosureOutcome {

        public Closed {
            surplus = List.copyOf(surplus);
            others = List.copyOf(others);
        }
    }

    /**
     * More is given than needed, and it contradicts itself.
     *
     * @param surplus every value beyond need, against what the others give
     * @param offers what could be given up, and what it would become; that which changes least first
     */
    record OverDetermined(List<Surplus> surplus, List<Offer> offers) implements ClosureOutcome {

        public OverDetermined {
            surplus = List.copyOf(surplus);
            offers = List.copyOf(offers);
        }
    }

    /**
     * Too little is given.
     *
     * @param missing what to add
     */
    record UnderDetermined(List<Missing> missing) implements ClosureOutcome {

        public UnderDetermined {
            missing = List.copyOf(missing);
        }

        /** In one sentence. */
        public String words() {
            return "Still missing: "
                    + String.join("; and ", missing.stream().map(Missing::words).toList()) + ".";
        }
    }

    /**
     * No frame has these.
     *
     * @param gaps what stands in the way, each naming an input; at least one
     */
    record Impossible(List<Answer.Gap> gaps) implements ClosureOutcome {

        public Impossible {
            gaps = List.copyOf(gaps);
        }
    }

    /**
     * A value beyond need.
     *
     * @param dimension which
     * @param given as it was given
     * @param computed as the others give it
     */
    record Surplus(Dimension dimension, double given, double computed) {

        /** Given less computed. */
        public double residual() {
            return given - computed;
        }

        /** In one sentence. */
        public String words() {
            return "The " + dimension.words() + " is given as " + dimension.written(given) + "; the others make it "
                    + dimension.written(computed) + ".";
        }
    }

    /**
     * A value that could be given up.
     *
     * @param dimension which
     * @param given as it was given
     * @param becomes what the others make it
     */
    record Offer(Dimension dimension, double given, double becomes) {

        /** In one sentence. */
        public String words() {
            return "Give up the " + dimension.words() + " of " + dimension.written(given) + ": it becomes "
                    + dimension.written(becomes) + ".";
        }
    }

    /**
     * Dimensions of which some are still needed.
     *
     * @param count how many
     * @param among which; if one is needed each of them will do, of several not every choice need be independent
     */
    record Missing(int count, List<Dimension> among) {

        public Missing {
            among = List.copyOf(among);
        }

        /** As part of a sentence. */
        public String words() {
            String names =
                    String.join(", ", among.stream().map(Dimension::words).toList());
            return among.size() == count
                    ? names
                    : count == 1 ? "one of " + names : count + " independent ones of " + names;
        }
    }
}
