package org.trammel.shop.designs;

import java.util.EnumSet;
import java.util.Set;
import org.trammel.shop.routes.Kinds;

/** What owner and QA lead look at before a drawing goes to the shop. */
public enum GateCheck {
    RIDER_DATA("Rider data", "complete, and asked twice where unusual"),
    COMPONENTS("Components", "list fixed; customer's own parts measured, not remembered"),
    CLOSURE("Closure", "stack from the inputs as it was asked for"),
    TRAIL("Trail", "inside the band of the category of use"),
    TYRE_CLEARANCE("Rear tyre to seat tube", "room for mud, and for what the frame gives"),
    TYRE_STAYS("Rear tyre in the rear end", "room beside the stays, or a swing arm, for mud and for dish"),
    SWING("Room of the swing arm", "tyre, arm and shock clear of seat tube and down tube over the whole travel"),
    TOE_CLEARANCE("Pedal axle to front tyre", "room to turn the wheel, unless the feet are held"),
    STANDOVER("Standover", "below the inseam"),
    HEAD_NODES("Head tube nodes", "weld toes apart, tube edges inside both ends"),
    MITRES("Mitres", "no tube wider than its mate; equal tubes formed or decided"),
    SEATPOST("Seatpost", "in past its mark and past the top-tube node"),
    TEST_FAMILY("Test family", "covers tube set, size, fork length and rider mass"),
    COUNTRY("Country rules", "bell, reflectors, lights, lever side known"),
    OVERALL_LENGTH(
            "Overall length", "at most what the shop set for its shortest oven; the ovens of the route are not asked"),
    NOMINALS("Typed nominals", "none contradicts the drawing by more than its tolerance"),
    DEPOSIT("Deposit", "paid or waived");

    private final String label;
    private final String rule;

    GateCheck(String label, String rule) {
        this.label = label;
        this.rule = rule;
    }

    /** Whether a frame has this check at all: the room of a swing arm is asked of a frame that has one. */
    public boolean concerns(DesignSheet sheet) {
        return this != SWING
                || sheet.kind().equals(Kinds.FULL_SUSPENSION)
                || sheet.geometry().containsKey(GeometryInput.PIVOT_AHEAD.code());
    }

    /** Whether its figures say all that is to say of it, so that one that was not computed leaves it open. */
    private boolean isComputed() {
        return switch (this) {
            case CLOSURE,
                    TYRE_CLEARANCE,
                    TYRE_STAYS,
                    SWING,
                    TOE_CLEARANCE,
                    STANDOVER,
                    HEAD_NODES,
                    MITRES,
                    SEATPOST,
                    OVERALL_LENGTH,
                    TRAIL,
                    TEST_FAMILY,
                    NOMINALS -> true;
            case RIDER_DATA, COMPONENTS, COUNTRY, DEPOSIT -> false;
        };
    }

    /** Whether it may say nothing about a frame: one for the shop's own stock has no rider, no country and no deposit. */
    boolean mayNotConcern() {
        return this == RIDER_DATA || this == COUNTRY || this == DEPOSIT;
    }

    /** A figure of it is missing, for whatever reason: nobody says that it is met, or that it does not matter. */
    boolean isUncomputed(CheckFigures now) {
        return isComputed() && !now.lacking().isEmpty();
    }

    /** The answers that it takes on these figures. */
    Set<GateAnswer> takes(CheckFigures now) {
        if (now.red() || isUncomputed(now)) {
            return EnumSet.of(GateAnswer.DECIDED);
        }
        return mayNotConcern() ? EnumSet.allOf(GateAnswer.class) : EnumSet.of(GateAnswer.MEETS, GateAnswer.DECIDED);
    }

    public String label() {
        return label;
    }

    public String rule() {
        return rule;
    }
}
