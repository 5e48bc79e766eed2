package org.trammel.calc.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.PaperShape.Spot;

/** Something drawn on a sheet; what comes later lies over what came before. */
public sealed interface Mark {

    /** What an area is filled with. */
    enum Fill {
        NONE,
        /** The paper: it covers what lies under it. */
        PAPER,
        INK
    }

    /** Where a text stands about its point. */
    enum Anchor {
        START(0),
        MIDDLE(0.5),
        END(1);

        private final double share;

        Anchor(double share) {
            this.share = share;
        }

        /** How much of the text stands before its point. */
        public double share() {
            return share;
        }
    }

    /** How a text is written. */
    enum Hand {
        /** Of a dimension. */
        FIGURE,
        /** What stands in a cell or a row. */
        PLAIN,
        BOLD,
        /** Names a cell. */
        CAPTION
    }

    /**
     * A line from point to point.
     *
     * @param closed whether it comes back to its first point
     * @param pen null for an area without an outline
     */
    record Path(List<Spot> spots, boolean closed, @Nullable Pen pen, Fill fill) implements Mark {

        public Path {
            spots = List.copyOf(spots);
        }
    }

    /** A circle. */
    record Ring(Spot centre, double radius_mm, Pen pen, Fill fill) implements Mark {}

    /**
     * A text on one line.
     *
     * @param at on its base line
     * @param turn_rad anticlockwise
     * @param size_mm of the letters' body
     */
    record Words(Spot at, double turn_rad, String words, double size_mm, Anchor anchor, Hand hand) implements Mark {}
}
