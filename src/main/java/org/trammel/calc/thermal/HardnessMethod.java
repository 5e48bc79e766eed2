package org.trammel.calc.thermal;

/**
 * How hardness, or what stands in for it, was found, and what to mind of it. Nothing is converted: tables between scales hold
 * for one alloy and temper at best, and a converted figure hides that.
 *
 * <p>Source: words of the trade; acceptance of hand gauges on extrusions as an extruder prints it (ASTM B647).
 */
public enum HardnessMethod {
    BRINELL(
            true,
            "Brinell needs a wall far thicker than its dent; on a thin tube it reads the support. Tell load and ball with it."),
    VICKERS(true, "Vickers is not converted to Brinell: tables hold for one alloy and temper. Tell the load with it."),
    ROCKWELL_B(
            true,
            "Rockwell B needs a thick wall and a firm support; figures in data sheets are mostly converted from Brinell."),
    HAND_PENETROMETER(
            false,
            "A hand penetrometer screens only: as extruded and naturally aged read the same, and its figures are not converted."),
    REBOUND(false, "A rebound gauge screens only: a thin wall gives way and reads soft."),
    CONDUCTIVITY(
            false,
            "Conductivity screens only: over-aged and under-aged metal can read the same; it goes with a hardness, on metal at"
                    + " the temperature of its standards.");

    private final boolean decides;
    private final String words;

    HardnessMethod(boolean decides, String words) {
        this.decides = decides;
        this.words = words;
    }

    /** Whether a reading may release a frame; a screening never does. */
    public boolean decides() {
        return decides;
    }

    /** What to mind, in words. */
    public String words() {
        return words;
    }
}
