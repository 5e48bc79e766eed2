package org.trammel.shop.designs;

import java.math.BigDecimal;

/**
 * A number the drawing starts from. Each has a range outside which no frame can be, and a narrower one outside which a
 * number is asked about before it is taken; both are our own trade judgement, not a standard's.
 */
public enum GeometryInput {
    HEAD_ANGLE("Head angle", Group.LAYOUT, "°", "30", "89.9", "60", "76"),
    SEAT_ANGLE("Seat angle", Group.LAYOUT, "°", "30", "89.9", "65", "80"),
    STACK_ASKED("Stack asked for", Group.LAYOUT, "mm", "200", "1200", "480", "760"),
    REACH("Reach", Group.LAYOUT, "mm", "100", "900", "300", "560"),
    HEAD_TUBE("Head tube length", Group.LAYOUT, "mm", "20", "500", "70", "260"),
    LOWER_STACK("Lower headset stack", Group.LAYOUT, "mm", "0", "80", "0", "25"),
    FORK_LENGTH("Fork, axle to crown", Group.LAYOUT, "mm", "100", "800", "340", "610"),
    FORK_OFFSET("Fork offset", Group.LAYOUT, "mm", "-30", "150", "25", "65"),
    SHELL_DROP("Drop of the shell below the front axle", Group.LAYOUT, "mm", "-150", "150", "-30", "90"),
    CHAINSTAY("Chainstay, shell to axle", Group.LAYOUT, "mm", "200", "1000", "380", "510"),
    SEAT_TUBE("Seat tube, shell centre to top", Group.LAYOUT, "mm", "100", "900", "250", "680"),
    SEAT_TUBE_OFFSET("Seat tube ahead of the shell", Group.LAYOUT, "mm", "-60", "100", "0", "45"),
    SHELL_TO_SHELL("Front shell to rear shell", Group.LAYOUT, "mm", "400", "1100", "600", "850"),
    FRONT_WHEEL_RADIUS("Front wheel radius with tyre", Group.LAYOUT, "mm", "100", "500", "250", "400"),
    REAR_WHEEL_RADIUS("Rear wheel radius with tyre", Group.LAYOUT, "mm", "100", "500", "250", "400"),
    AXLE_WIDTH("Rear axle width", Group.LAYOUT, "mm", "80", "260", "100", "200"),

    TOP_TUBE_AT_HEAD("Top tube below the top of the head tube", Group.NODES, "mm", "1", "250", "15", "70"),
    DOWN_TUBE_AT_HEAD("Down tube above the bottom of the head tube", Group.NODES, "mm", "1", "250", "15", "70"),
    TOP_TUBE_AT_SEAT("Top tube below the top of the seat tube", Group.NODES, "mm", "1", "400", "15", "120"),
    SEATSTAY_AT_SEAT("Seatstay below the top of the seat tube", Group.NODES, "mm", "1", "400", "15", "140"),
    CHAINSTAY_AT_SHELL("Chainstay from the middle plane at the shell", Group.NODES, "mm", "5", "80", "15", "45"),

    HEAD_TUBE_OUTSIDE("Head tube outside", Group.TUBES, "mm", "20", "90", "30", "64"),
    HEAD_TUBE_BORE("Head tube bore", Group.TUBES, "mm", "15", "85", "30", "58"),
    SHELL_OUTSIDE("Shell outside", Group.TUBES, "mm", "25", "80", "36", "52"),
    SHELL_BORE("Shell bore", Group.TUBES, "mm", "20", "75", "30", "48"),
    SHELL_WIDTH("Shell width", Group.TUBES, "mm", "50", "150", "66", "121"),
    DOWN_TUBE_OUTSIDE("Down tube outside", Group.TUBES, "mm", "10", "90", "28", "60"),
    DOWN_TUBE_WALL("Down tube wall", Group.TUBES, "mm", "0.3", "6", "0.5", "2.5"),
    TOP_TUBE_OUTSIDE("Top tube outside", Group.TUBES, "mm", "10", "90", "25", "50"),
    TOP_TUBE_WALL("Top tube wall", Group.TUBES, "mm", "0.3", "6", "0.5", "2.5"),
    SEAT_TUBE_OUTSIDE("Seat tube outside", Group.TUBES, "mm", "10", "90", "25", "45"),
    SEAT_TUBE_WALL("Seat tube wall", Group.TUBES, "mm", "0.3", "6", "0.5", "2.5"),
    CHAINSTAY_OUTSIDE("Chainstay outside", Group.TUBES, "mm", "8", "60", "12", "30"),
    CHAINSTAY_WALL("Chainstay wall", Group.TUBES, "mm", "0.3", "6", "0.5", "2.5"),
    SEATSTAY_OUTSIDE("Seatstay outside", Group.TUBES, "mm", "8", "60", "12", "25"),
    SEATSTAY_WALL("Seatstay wall", Group.TUBES, "mm", "0.3", "6", "0.5", "2.5"),

    PIVOT_AHEAD("Main pivot ahead of the shell", Group.SUSPENSION, "mm", "-200", "300", "-20", "80"),
    PIVOT_ABOVE("Main pivot above the shell", Group.SUSPENSION, "mm", "-100", "400", "20", "140"),
    SHOCK_ARM("Pivot to the shock's moving eye", Group.SUSPENSION, "mm", "20", "400", "100", "260"),
    SHOCK_ARM_ANGLE("Angle of that arm, from ahead", Group.SUSPENSION, "°", "-180", "180", "30", "150"),
    TRAVEL("Rear travel", Group.SUSPENSION, "mm", "10", "300", "80", "220"),
    SHOCK_LENGTH("Shock, eye to eye", Group.SUSPENSION, "mm", "80", "350", "150", "270"),
    SHOCK_STROKE("Shock stroke", Group.SUSPENSION, "mm", "10", "120", "30", "80"),

    CRANK("Crank length", Group.PARTS, "mm", "80", "250", "155", "180"),
    FEET_HELD("Pedals hold the feet", Group.PARTS, "", "0", "1", "0", "1"),
    SADDLE_CLAMP("Saddle clamp above the foot of the seat tube", Group.PARTS, "mm", "200", "1200", "500", "850"),
    SEATPOST("Seatpost, lower end to saddle clamp", Group.PARTS, "mm", "80", "700", "250", "500"),
    SEATPOST_MARK("Least insertion by the seatpost's mark", Group.PARTS, "mm", "20", "400", "60", "160"),
    SEATPOST_DEPTH("Free depth of the seat tube", Group.PARTS, "mm", "40", "900", "100", "500"),

    DROPOUT_MASS("Mass of the dropouts", Group.MASS, "kg", "0.01", "2", "0.08", "0.4"),
    WELD_MASS("Mass of welds or fillets", Group.MASS, "kg", "0", "1", "0.01", "0.2"),
    SMALL_PARTS_MASS("Mass of small parts", Group.MASS, "kg", "0", "2", "0.01", "0.3"),
    PIVOT_MASS("Mass of pivot parts", Group.MASS, "kg", "0", "2", "0.08", "0.4");

    /** Where an input stands on the sheet. */
    public enum Group {
        LAYOUT("Layout"),
        NODES("Nodes"),
        TUBES("Tubes"),
        SUSPENSION("Suspension"),
        PARTS("Rider's parts"),
        MASS("Mass");

        private final String word;

        Group(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    private final String label;
    private final Group group;
    private final Band band;

    GeometryInput(String label, Group group, String unit, String least, String most, String usualFrom, String usualTo) {
        this.label = label;
        this.group = group;
        this.band = new Band(
                label,
                unit,
                new BigDecimal(least),
                new BigDecimal(most),
                new BigDecimal(usualFrom),
                new BigDecimal(usualTo));
    }

    /** Its name in files and in the API. */
    public String code() {
        return name();
    }

    public String label() {
        return label;
    }

    public Group group() {
        return group;
    }

    public String unit() {
        return band.unit();
    }

    /** Whether it is answered by yes, 1, or no, 0. */
    public boolean yesOrNo() {
        return this == FEET_HELD;
    }

    /** What it can be, and what it usually is. */
    public Band band() {
        return band;
    }
}
