package org.trammel.shop.alignment;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * How a frame lies on the table and is read there.
 *
 * @param datum what the middle plane is taken from
 * @param base what the head tube's lean is read on
 * @param driveUp whether the drive side lies up
 * @param seatLow_mm lower station of the seat tube, along its axis from the foot
 * @param seatHigh_mm upper station
 * @param tubeBase_mm distance of the stations on the head tube, about its middle
 * @param mandrelBase_mm distance of those on the mandrel, about the middle of the head tube
 * @param seatDiameter_mm where heights are of the tube's upper side; null where they are of its middle
 * @param headDiameter_mm likewise
 * @param mandrelDiameter_mm likewise
 * @param bothSides whether tubes are read from above and from below
 * @param sideView whether the side view is read by heights in two settings of the frame, a quarter turn apart
 */
public record TableSetUp(
        Datum datum,
        Base base,
        boolean driveUp,
        BigDecimal seatLow_mm,
        BigDecimal seatHigh_mm,
        BigDecimal tubeBase_mm,
        BigDecimal mandrelBase_mm,
        @Nullable BigDecimal seatDiameter_mm,
        @Nullable BigDecimal headDiameter_mm,
        @Nullable BigDecimal mandrelDiameter_mm,
        boolean bothSides,
        boolean sideView) {

    /** Each place of a tube read once, and nothing of the side view. */
    public TableSetUp(
            Datum datum,
            Base base,
            boolean driveUp,
            BigDecimal seatLow_mm,
            BigDecimal seatHigh_mm,
            BigDecimal tubeBase_mm,
            BigDecimal mandrelBase_mm,
            @Nullable BigDecimal seatDiameter_mm,
            @Nullable BigDecimal headDiameter_mm,
            @Nullable BigDecimal mandrelDiameter_mm) {
        this(
                datum,
                base,
                driveUp,
                seatLow_mm,
                seatHigh_mm,
                tubeBase_mm,
                mandrelBase_mm,
                seatDiameter_mm,
                headDiameter_mm,
                mandrelDiameter_mm,
                false,
                false);
    }

    /** What the middle plane is taken from. */
    public enum Datum {
        POST("shell on its post"),
        FACES("faces of the shell"),
        POINTS("points of an arm or probe");

        private final String words;

        Datum(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** What the head tube's lean is read on. */
    public enum Base {
        TUBE("the tube itself"),
        MANDREL("the mandrel");

        private final String words;

        Base(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** The same, read on the mandrel or on the tube. */
    public TableSetUp on(Base other) {
        return new TableSetUp(
                datum,
                other,
                driveUp,
                seatLow_mm,
                seatHigh_mm,
                tubeBase_mm,
                mandrelBase_mm,
                seatDiameter_mm,
                headDiameter_mm,
                mandrelDiameter_mm,
                bothSides,
                sideView);
    }

    /** The same, its tubes read from both sides, or its side view by heights. */
    public TableSetUp with(boolean fromBothSides, boolean ofSideView) {
        return new TableSetUp(
                datum,
                base,
                driveUp,
                seatLow_mm,
                seatHigh_mm,
                tubeBase_mm,
                mandrelBase_mm,
                seatDiameter_mm,
                headDiameter_mm,
                mandrelDiameter_mm,
                fromBothSides,
                ofSideView);
    }

    /** The same from another datum. */
    public TableSetUp from(Datum other) {
        return new TableSetUp(
                other,
                base,
                driveUp,
                seatLow_mm,
                seatHigh_mm,
                tubeBase_mm,
                mandrelBase_mm,
                seatDiameter_mm,
                headDiameter_mm,
                mandrelDiameter_mm,
                bothSides,
                sideView);
    }

    BigDecimal base_mm() {
        return base == Base.TUBE ? tubeBase_mm : mandrelBase_mm;
    }
}
