package org.trammel.calc.geometry;

import java.util.function.ToDoubleFunction;

/**
 * What may be given of a frame: the thirteen numbers of a {@link Layout}, and what else is measured on one or asked for.
 * Values are in millimetres, those of angles in radians. The usual span is our own judgement of upright bicycles; it
 * decides only between several frames that would do, and is no limit.
 */
public enum Dimension {
    HEAD_ANGLE("head angle", Kind.ANGLE, 60, 76, g -> g.layout().headAngle_rad()),
    SEAT_ANGLE("seat angle", Kind.ANGLE, 65, 80, g -> g.layout().seatAngle_rad()),
    REACH("reach", Kind.EITHER_SIGN, 300, 560, g -> g.layout().reach_mm()),
    HEAD_TUBE("head tube", Kind.ABOVE_ZERO, 70, 260, g -> g.layout().headTube_mm()),
    LOWER_STACK("lower headset stack", Kind.FROM_ZERO, 0, 25, g -> g.layout().lowerStack_mm()),
    FORK_LENGTH("fork length", Kind.ABOVE_ZERO, 340, 610, g -> g.layout().forkLength_mm()),
    FORK_OFFSET("fork offset", Kind.EITHER_SIGN, 25, 65, g -> g.layout().forkOffset_mm()),
    SHELL_DROP("shell drop", Kind.EITHER_SIGN, -30, 90, g -> g.layout().shellDrop_mm()),
    CHAINSTAY("chainstay", Kind.ABOVE_ZERO, 380, 510, g -> g.layout().chainstay_mm()),
    SEAT_TUBE("seat tube", Kind.ABOVE_ZERO, 250, 680, g -> g.layout().seatTube_mm()),
    SEAT_TUBE_OFFSET(
            "seat tube offset", Kind.EITHER_SIGN, 0, 45, g -> g.layout().seatTubeOffset_mm()),
    FRONT_WHEEL_RADIUS(
            "front wheel radius", Kind.ABOVE_ZERO, 250, 400, g -> g.layout().frontWheelRadius_mm()),
    REAR_WHEEL_RADIUS(
            "rear wheel radius", Kind.ABOVE_ZERO, 250, 400, g -> g.layout().rearWheelRadius_mm()),

    /** Top of the head tube above the shell. */
    STACK("stack", Kind.ABOVE_ZERO, 480, 760, FrameGeometry::stack_mm),
    /** Shell to front axle, straight. */
    FRONT_CENTRE("front centre", Kind.ABOVE_ZERO, 540, 880, FrameGeometry::frontCentre_mm),
    /** Shell to front axle along the ground. */
    FRONT_CENTRE_LEVEL(
            "level front centre", Kind.ABOVE_ZERO, 540, 880, g -> g.frontAxle().x_mm()),
    /** Shell to rear axle along the ground. */
    REAR_CENTRE_LEVEL(
            "level rear centre", Kind.ABOVE_ZERO, 380, 510, g -> -g.rearAxle().x_mm()),
    /** Axle to axle along the ground. */
    WHEELBASE("wheelbase", Kind.ABOVE_ZERO, 940, 1350, FrameGeometry::wheelbase_mm),
    /** Shell above the ground. */
    SHELL_HEIGHT("shell height", Kind.ABOVE_ZERO, 250, 370, FrameGeometry::shellHeight_mm),
    /** Shell below the rear axle. */
    REAR_SHELL_DROP(
            "drop below the rear axle",
            Kind.EITHER_SIGN,
            -40,
            90,
            g -> g.layout().rearDrop_mm()),
    /** From the top of the head tube level to the seat tube's axis. */
    EFFECTIVE_TOP_TUBE("effective top tube", Kind.ABOVE_ZERO, 480, 740, FrameGeometry::effectiveTopTube_mm),
    /** From the front tyre's contact ahead to the steering axis, along the ground. */
    TRAIL("trail", Kind.EITHER_SIGN, 40, 140, FrameGeometry::trail_mm),
    /** The same at right angles to the steering axis. */
    MECHANICAL_TRAIL("mechanical trail", Kind.EITHER_SIGN, 38, 130, FrameGeometry::mechanicalTrail_mm),
    /** How far the front sinks for a turn by one radian. */
    FLOP("flop", Kind.EITHER_SIGN, 10, 60, FrameGeometry::flop_mm),
    /** Front axle to crown in a straight line. */
    FORK_STRAIGHT("straight fork length", Kind.ABOVE_ZERO, 340, 615, FrameGeometry::forkStraight_mm);

    /** What values there are at all. */
    enum Kind {
        ANGLE,
        ABOVE_ZERO,
        FROM_ZERO,
        EITHER_SIGN
    }

    /** Longer than this, a figure was not meant in millimetres. */
    static final double LONGEST_mm = 100_000;

    private static final Dimension[] ALL = values();

    private final String words;
    private final String input;
    private final Kind kind;
    private final double usualFrom;
    private final double usualTo;
    private final ToDoubleFunction<FrameGeometry> measured;

    Dimension(String words, Kind kind, double usualFrom, double usualTo, ToDoubleFunction<FrameGeometry> measured) {
        this.words = words;
        this.input = camel(name());
        this.kind = kind;
        this.usualFrom = kind == Kind.ANGLE ? Math.toRadians(usualFrom) : usualFrom;
        this.usualTo = kind == Kind.ANGLE ? Math.toRadians(usualTo) : usualTo;
        this.measured = measured;
    }

    private static String camel(String name) {
        StringBuilder camel = new StringBuilder();
        for (String word : name.split("_")) {
            camel.append(
                    camel.isEmpty()
                            ? word.toLowerCase(java.util.Locale.ROOT)
                            : word.charAt(0) + word.substring(1).toLowerCase(java.util.Locale.ROOT));
        }
        return camel.toString();
    }

    static Dimension at(int ordinal) {
        return ALL[ordinal];
    }

    static int count() {
        return ALL.length;
    }

    /** As a sentence has it. */
    public String words() {
        return words;
    }

    /** The name that {@link org.trammel.calc.units.Answer.Gap#input} has it by. */
    public String input() {
        return input;
    }

    /** In radians, not millimetres. */
    public boolean isAngle() {
        return kind == Kind.ANGLE;
    }

    /** What a frame has of it, in millimetres or radians. */
    public double of(FrameGeometry geometry) {
        return measured.applyAsDouble(geometry);
    }

    /** A value with its unit, as a sentence has it: millimetres or degrees. */
    public String written(double value) {
        return isAngle() ? Written.degrees(value) : Written.mm(value);
    }

    Kind kind() {
        return kind;
    }

    boolean allows(double value) {
        return switch (kind) {
            case ANGLE -> value > 0 && value < Math.PI / 2;
            case ABOVE_ZERO -> value > 0 && value <= LONGEST_mm;
            case FROM_ZERO -> value >= 0 && value <= LONGEST_mm;
            case EITHER_SIGN -> Math.abs(value) <= LONGEST_mm;
        };
    }

    /** How far outside its usual span a value lies, in widths of the span; 0 inside. */
    double unusual(double value) {
        return Math.max(0, Math.max(usualFrom - value, value - usualTo)) / (usualTo - usualFrom);
    }

    /** A change in widths of the usual span. */
    double share(double change) {
        return Math.abs(change) / (usualTo - usualFrom);
    }

    /** How far from the middle of its usual span a value lies, in widths of the span. */
    double fromMiddle(double value) {
        return Math.abs(value - (usualFrom + usualTo) / 2) / (usualTo - usualFrom);
    }
}
