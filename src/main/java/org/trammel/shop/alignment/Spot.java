package org.trammel.shop.alignment;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.trammel.calc.metrology.PlateLengths;
import org.trammel.calc.units.DecimalSign;
import org.trammel.shop.records.Refusal;

/** A place of a frame on the plate that is read by one figure. */
public enum Spot {
    SEAT_LOW(Group.SEAT_TUBE, "lower station", true),
    SEAT_HIGH(Group.SEAT_TUBE, "upper station", true),
    SEAT_LOW_UNDER(Group.SEAT_TUBE, "lower station from below", true),
    SEAT_HIGH_UNDER(Group.SEAT_TUBE, "upper station from below", true),
    HEAD_LOW(Group.HEAD_TUBE, "lower station", true),
    HEAD_HIGH(Group.HEAD_TUBE, "upper station", true),
    HEAD_LOW_UNDER(Group.HEAD_TUBE, "lower station from below", true),
    HEAD_HIGH_UNDER(Group.HEAD_TUBE, "upper station from below", true),
    MANDREL_LOW(Group.MANDREL, "lower station", true),
    MANDREL_HIGH(Group.MANDREL, "upper station", true),
    POST(Group.SHELL, "middle, on the post", true),
    FACE_DRIVE_1(Group.SHELL, "drive face, ahead", true),
    FACE_DRIVE_2(Group.SHELL, "drive face, above behind", true),
    FACE_DRIVE_3(Group.SHELL, "drive face, below behind", true),
    FACE_OTHER_1(Group.SHELL, "non-drive face, ahead", true),
    FACE_OTHER_2(Group.SHELL, "non-drive face, above behind", true),
    FACE_OTHER_3(Group.SHELL, "non-drive face, below behind", true),
    AXLE_DRIVE(Group.REAR_END, "drive dropout, inner face", true),
    AXLE_OTHER(Group.REAR_END, "non-drive dropout, inner face", true),
    AXLE_WIDTH_1(Group.REAR_END, "width inside, above the axle", false),
    AXLE_WIDTH_2(Group.REAR_END, "width inside, at the axle", false),
    AXLE_WIDTH_3(Group.REAR_END, "width inside, below the axle", false),
    GAP_FORE(Group.REAR_END, "gap fore", false),
    GAP_AFT(Group.REAR_END, "gap aft", false),
    GAP_UP(Group.REAR_END, "gap up", false),
    GAP_DOWN(Group.REAR_END, "gap down", false),
    STAY_DRIVE(Group.REAR_END, "drive chainstay, pin to pin", false),
    STAY_OTHER(Group.REAR_END, "non-drive chainstay, pin to pin", false),
    SIDE_SHELL_1(Group.SIDE_FIRST, "axis of the shell", true),
    SIDE_AXLE_1(Group.SIDE_FIRST, "rear axle", true),
    SIDE_HEAD_LOW_1(Group.SIDE_FIRST, "head tube, lower end", true),
    SIDE_HEAD_HIGH_1(Group.SIDE_FIRST, "head tube, middle of its upper end", true),
    SIDE_SEAT_LOW_1(Group.SIDE_FIRST, "seat tube, low", true),
    SIDE_SEAT_HIGH_1(Group.SIDE_FIRST, "seat tube, high", true),
    SIDE_SHELL_2(Group.SIDE_TURNED, "axis of the shell", true),
    SIDE_AXLE_2(Group.SIDE_TURNED, "rear axle", true),
    SIDE_HEAD_LOW_2(Group.SIDE_TURNED, "head tube, lower end", true),
    SIDE_HEAD_HIGH_2(Group.SIDE_TURNED, "head tube, middle of its upper end", true),
    SIDE_SEAT_LOW_2(Group.SIDE_TURNED, "seat tube, low", true),
    SIDE_SEAT_HIGH_2(Group.SIDE_TURNED, "seat tube, high", true);

    /** What is read together. */
    public enum Group {
        SEAT_TUBE("Seat tube"),
        HEAD_TUBE("Head tube"),
        MANDREL("Mandrel"),
        SHELL("Shell"),
        REAR_END("Rear end"),
        SIDE_FIRST("Side view, first setting"),
        SIDE_TURNED("Side view, a quarter turn on");

        private final String words;

        Group(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** Angles of three points round a face of the shell, from ahead over above, in degrees. */
    private static final double[] ROUND_DEG = {0, 120, 240};

    private final Group group;
    private final String words;
    private final boolean height;

    Spot(Group group, String words, boolean height) {
        this.group = group;
        this.words = words;
        this.height = height;
    }

    public Group group() {
        return group;
    }

    /** Place within its group. */
    public String words() {
        return words;
    }

    /** The place as a sentence has it. */
    public String called() {
        return group.words().toLowerCase(java.util.Locale.ROOT) + ", " + words;
    }

    /** Whether it is a height above the plate; else a length. */
    public boolean height() {
        return height;
    }

    /**
     * Refuses a length that a rear end cannot have, before it is kept: it would only be refused with everything else read.
     *
     * @param deed what is not done otherwise, as a sentence
     */
    void requirePossible(BigDecimal mm, String deed) {
        PlateLengths within = switch (this) {
            case AXLE_WIDTH_1, AXLE_WIDTH_2, AXLE_WIDTH_3 -> PlateLengths.AXLE_WIDTH;
            case GAP_FORE, GAP_AFT, GAP_UP, GAP_DOWN -> PlateLengths.GAP;
            case STAY_DRIVE, STAY_OTHER -> PlateLengths.CHAINSTAY;
            default -> null;
        };
        if (within != null
                && (mm.compareTo(BigDecimal.valueOf(within.least_mm())) < 0
                        || mm.compareTo(BigDecimal.valueOf(within.most_mm())) > 0)) {
            throw Refusal.input(
                    "value",
                    deed,
                    DecimalSign.COMMA.write(mm) + " mm is not between " + within.least_mm() + " and " + within.most_mm()
                            + ".",
                    within == PlateLengths.GAP
                            ? "Enter the whole distance between both dropouts there, not by how much they differ."
                            : "Enter the whole length in millimetres.");
        }
    }

    /** Whether it lies on a tube or mandrel that stands about as high as the post. */
    boolean onAxis() {
        return group == Group.SEAT_TUBE || group == Group.HEAD_TUBE || group == Group.MANDREL || this == POST;
    }

    /** Whether it is the lower side of a tube that is read from both. */
    boolean under() {
        return name().endsWith("_UNDER");
    }

    /** The lower side of a station of a tube; empty where a place has none. */
    Optional<Spot> below() {
        return named(name() + "_UNDER");
    }

    /** Whether it belongs to the side view. */
    boolean side() {
        return group == Group.SIDE_FIRST || group == Group.SIDE_TURNED;
    }

    /** Angle of a point round its face, rad. */
    double round_rad() {
        return Math.toRadians(ROUND_DEG[name().charAt(name().length() - 1) - '1']);
    }

    static List<Spot> of(Group group) {
        return Arrays.stream(values()).filter(spot -> spot.group == group).toList();
    }

    static List<Spot> startingWith(String name) {
        return Arrays.stream(values())
                .filter(spot -> spot.name().startsWith(name))
                .toList();
    }

    static Optional<Spot> named(String name) {
        return Arrays.stream(values()).filter(spot -> spot.name().equals(name)).findFirst();
    }
}
