package org.trammel.calc.geometry;

import java.util.List;

/** How an end of a tube is cut. */
public sealed interface EndCut {

    /**
     * On a round mate.
     *
     * @param mate its name in a sentence
     * @param mitre how it is cut
     * @param driveSideAt_rad φ of the tube's drive side
     * @param lineAt_rad φ of the line along the tube that joins both ends: φ = 0 of its first end
     */
    record Mitred(String mate, Mitre mitre, double driveSideAt_rad, double lineAt_rad) implements EndCut {

        @Override
        public double least_mm() {
            return mitre.curve().least_mm();
        }

        @Override
        public double most_mm() {
            return mitre.curve().most_mm();
        }

        @Override
        public boolean isTrimmed() {
            return true;
        }

        @Override
        public List<Caution> cautions() {
            return mitre.cautions().stream()
                    .map(caution -> new Caution(caution.kind(), "At the " + mate + ": " + caution.words()))
                    .toList();
        }
    }

    /** Straight across. */
    record Square() implements EndCut {}

    /**
     * Slotted for a dropout.
     *
     * @param slot its measures
     */
    record Slotted(DropoutSlot slot) implements EndCut {

        @Override
        public List<Caution> cautions() {
            return slot.left_mm() > 0
                    ? List.of()
                    : List.of(new Caution(
                            Caution.Kind.SLOT_BREAKS_OUT,
                            "The slot, " + Objections.shown(slot.depth_mm()) + " deep and tilted by "
                                    + Written.degrees(slot.tilt_rad())
                                    + ", breaks through the side of the stay: make it shorter or bend the stay."));
        }
    }

    /**
     * Beside its mate, with a cap or a cut that the drawing shows.
     *
     * @param mate its name in a sentence
     * @param angle_rad between both axes in space
     */
    record AsDrawn(String mate, double angle_rad) implements EndCut {

        @Override
        public boolean isTrimmed() {
            return true;
        }
    }

    /** Shortest setback from the node, 0 where the axis length ends with the tube. */
    default double least_mm() {
        return 0;
    }

    /** Longest setback. */
    default double most_mm() {
        return 0;
    }

    /** Whether the blank is left longer for this cut. */
    default boolean isTrimmed() {
        return false;
    }

    default List<Caution> cautions() {
        return List.of();
    }
}
