package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.Arrays;
import org.trammel.calc.units.DecimalSign;

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
    REAR_TYRE_WIDTH("Rear tyre width", Group.LAYOUT, "mm", "15", "150", "22", "120"),

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

    DOWN_TUBE_LENGTH("Down tube, length as bought", Group.BUTTS, "mm", "50", "1500", "200", "900"),
    DOWN_TUBE_BUTT_AT_HEAD("Down tube, butt at the head tube", Group.BUTTS, "mm", "0", "600", "15", "300"),
    DOWN_TUBE_MIDDLE_WALL("Down tube, wall between the butts", Group.BUTTS, "mm", "0.3", "6", "0.4", "2"),
    DOWN_TUBE_BUTT_AT_SHELL("Down tube, butt at the shell", Group.BUTTS, "mm", "0", "600", "15", "300"),
    DOWN_TUBE_WALL_AT_SHELL("Down tube, wall of the butt at the shell", Group.BUTTS, "mm", "0.3", "6", "0.5", "2.5"),
    TOP_TUBE_LENGTH("Top tube, length as bought", Group.BUTTS, "mm", "50", "1500", "200", "900"),
    TOP_TUBE_BUTT_AT_HEAD("Top tube, butt at the head tube", Group.BUTTS, "mm", "0", "600", "15", "300"),
    TOP_TUBE_MIDDLE_WALL("Top tube, wall between the butts", Group.BUTTS, "mm", "0.3", "6", "0.4", "2"),
    TOP_TUBE_BUTT_AT_SEAT("Top tube, butt at the seat tube", Group.BUTTS, "mm", "0", "600", "15", "300"),
    TOP_TUBE_WALL_AT_SEAT("Top tube, wall of the butt at the seat tube", Group.BUTTS, "mm", "0.3", "6", "0.5", "2.5"),
    SEAT_TUBE_LENGTH("Seat tube, length as bought", Group.BUTTS, "mm", "50", "1500", "200", "900"),
    SEAT_TUBE_BUTT_AT_SHELL("Seat tube, butt at the shell", Group.BUTTS, "mm", "0", "600", "15", "300"),
    SEAT_TUBE_MIDDLE_WALL("Seat tube, wall between the butts", Group.BUTTS, "mm", "0.3", "6", "0.4", "2"),
    SEAT_TUBE_BUTT_AT_TOP("Seat tube, butt at the top", Group.BUTTS, "mm", "0", "600", "15", "300"),
    SEAT_TUBE_WALL_AT_TOP("Seat tube, wall of the butt at the top", Group.BUTTS, "mm", "0.3", "6", "0.5", "2.5"),
    CHAINSTAY_LENGTH("Chainstay, length as bought", Group.BUTTS, "mm", "50", "1500", "200", "900"),
    CHAINSTAY_BUTT_AT_SHELL("Chainstay, butt at the shell", Group.BUTTS, "mm", "0", "600", "15", "300"),
    CHAINSTAY_MIDDLE_WALL("Chainstay, wall between the butts", Group.BUTTS, "mm", "0.3", "6", "0.4", "2"),
    CHAINSTAY_BUTT_AT_DROPOUT("Chainstay, butt at the dropout", Group.BUTTS, "mm", "0", "600", "15", "300"),
    CHAINSTAY_WALL_AT_DROPOUT(
            "Chainstay, wall of the butt at the dropout", Group.BUTTS, "mm", "0.3", "6", "0.5", "2.5"),
    SEATSTAY_LENGTH("Seatstay, length as bought", Group.BUTTS, "mm", "50", "1500", "200", "900"),
    SEATSTAY_BUTT_AT_SEAT("Seatstay, butt at the seat tube", Group.BUTTS, "mm", "0", "600", "15", "300"),
    SEATSTAY_MIDDLE_WALL("Seatstay, wall between the butts", Group.BUTTS, "mm", "0.3", "6", "0.4", "2"),
    SEATSTAY_BUTT_AT_DROPOUT("Seatstay, butt at the dropout", Group.BUTTS, "mm", "0", "600", "15", "300"),
    SEATSTAY_WALL_AT_DROPOUT("Seatstay, wall of the butt at the dropout", Group.BUTTS, "mm", "0.3", "6", "0.5", "2.5"),

    FORMED_DOWN_TUBE_HEAD("Down tube at the head tube, formed upright to", Group.FORMED, "mm", "5", "120", "25", "60"),
    FORMED_DOWN_TUBE_HEAD_ZONE("Down tube at the head tube, formed over", Group.FORMED, "mm", "5", "600", "30", "200"),
    FORMED_DOWN_TUBE_SHELL("Down tube at the shell, formed upright to", Group.FORMED, "mm", "5", "120", "25", "60"),
    FORMED_DOWN_TUBE_SHELL_ZONE("Down tube at the shell, formed over", Group.FORMED, "mm", "5", "600", "30", "200"),
    FORMED_TOP_TUBE_HEAD("Top tube at the head tube, formed upright to", Group.FORMED, "mm", "5", "120", "20", "50"),
    FORMED_TOP_TUBE_HEAD_ZONE("Top tube at the head tube, formed over", Group.FORMED, "mm", "5", "600", "30", "200"),
    FORMED_TOP_TUBE_SEAT("Top tube at the seat tube, formed upright to", Group.FORMED, "mm", "5", "120", "20", "50"),
    FORMED_TOP_TUBE_SEAT_ZONE("Top tube at the seat tube, formed over", Group.FORMED, "mm", "5", "600", "30", "200"),
    FORMED_SEAT_TUBE_SHELL("Seat tube at the shell, formed upright to", Group.FORMED, "mm", "5", "120", "20", "50"),
    FORMED_SEAT_TUBE_SHELL_ZONE("Seat tube at the shell, formed over", Group.FORMED, "mm", "5", "600", "30", "200"),
    FORMED_CHAINSTAY_SHELL("Chainstay at the shell, formed upright to", Group.FORMED, "mm", "5", "120", "12", "36"),
    FORMED_CHAINSTAY_SHELL_ZONE("Chainstay at the shell, formed over", Group.FORMED, "mm", "5", "600", "30", "200"),

    CHAINSTAY_BEND_1("Chainstay, first bend from its front end", Group.STAYS, "mm", "1", "900", "20", "450"),
    CHAINSTAY_BEND_1_OUT(
            "Chainstay, first bend off the straight line outward", Group.STAYS, "mm", "-80", "80", "-30", "30"),
    CHAINSTAY_BEND_1_RADIUS("Chainstay, radius of the first bend", Group.STAYS, "mm", "0", "2000", "40", "400"),
    CHAINSTAY_BEND_2("Chainstay, second bend from its front end", Group.STAYS, "mm", "1", "900", "20", "450"),
    CHAINSTAY_BEND_2_OUT(
            "Chainstay, second bend off the straight line outward", Group.STAYS, "mm", "-80", "80", "-30", "30"),
    CHAINSTAY_BEND_2_RADIUS("Chainstay, radius of the second bend", Group.STAYS, "mm", "0", "2000", "40", "400"),
    SEATSTAY_BEND_1("Seatstay, first bend from its front end", Group.STAYS, "mm", "1", "900", "20", "450"),
    SEATSTAY_BEND_1_OUT(
            "Seatstay, first bend off the straight line outward", Group.STAYS, "mm", "-80", "80", "-30", "30"),
    SEATSTAY_BEND_1_RADIUS("Seatstay, radius of the first bend", Group.STAYS, "mm", "0", "2000", "40", "400"),
    SEATSTAY_BEND_2("Seatstay, second bend from its front end", Group.STAYS, "mm", "1", "900", "20", "450"),
    SEATSTAY_BEND_2_OUT(
            "Seatstay, second bend off the straight line outward", Group.STAYS, "mm", "-80", "80", "-30", "30"),
    SEATSTAY_BEND_2_RADIUS("Seatstay, radius of the second bend", Group.STAYS, "mm", "0", "2000", "40", "400"),
    DROPOUT_PLATE("Dropout plate, thickness", Group.STAYS, "mm", "1", "20", "3", "10"),
    SLOT_PLAY("Play of the slot for it", Group.STAYS, "mm", "0", "2", "0", "0.3"),
    SLOT_DEPTH("Depth of the slot", Group.STAYS, "mm", "1", "120", "10", "45"),
    AXLE_TO_STAY("Axle to the end of the stay's tube", Group.STAYS, "mm", "0", "120", "10", "45"),
    STAY_OUTSIDE_FACE("Stay's axis outside the axle's face", Group.STAYS, "mm", "-20", "40", "0", "12"),

    PIVOT_AHEAD("Main pivot ahead of the shell", Group.SUSPENSION, "mm", "-200", "300", "-20", "80"),
    PIVOT_ABOVE("Main pivot above the shell", Group.SUSPENSION, "mm", "-100", "400", "20", "140"),
    SHOCK_ARM("Pivot to the shock's moving eye", Group.SUSPENSION, "mm", "20", "400", "100", "260"),
    SHOCK_ARM_ANGLE("Angle of that arm, from ahead", Group.SUSPENSION, "°", "-180", "180", "30", "150"),
    TRAVEL("Rear travel", Group.SUSPENSION, "mm", "10", "300", "80", "220"),
    SHOCK_LENGTH("Shock, eye to eye", Group.SUSPENSION, "mm", "80", "350", "150", "270"),
    SHOCK_STROKE("Shock stroke", Group.SUSPENSION, "mm", "10", "120", "30", "80"),
    FRAME_EYE_AHEAD(
            "Shock's eye on the frame, ahead of the shell", Group.SUSPENSION, "mm", "-300", "600", "-50", "400"),
    FRAME_EYE_ABOVE("Shock's eye on the frame, above the shell", Group.SUSPENSION, "mm", "-200", "700", "20", "500"),
    SAG("Sag, share of the shock's stroke", Group.SUSPENSION, "%", "1", "90", "15", "40"),
    SHOCK_OUTSIDE("Shock, outside of its body", Group.SUSPENSION, "mm", "10", "150", "35", "75"),
    SHOCK_EYE_OUTSIDE("Shock, outside of its eyes with their mounts", Group.SUSPENSION, "mm", "5", "100", "15", "40"),
    SHOCK_EYE("Shock, from an eye's centre to its body", Group.SUSPENSION, "mm", "0", "100", "10", "50"),
    ARM_INSIDE("Swing arm, inside between its sides", Group.SUSPENSION, "mm", "10", "250", "36", "110"),
    ARM_SIDE("Swing arm, depth of its sides", Group.SUSPENSION, "mm", "5", "120", "12", "45"),
    ARM_BRIDGE("Swing arm, from pivot to its bridge", Group.SUSPENSION, "mm", "10", "600", "50", "200"),
    ARM_BRIDGE_OUTSIDE("Swing arm, outside of its bridge", Group.SUSPENSION, "mm", "5", "100", "8", "40"),
    ARM_WIDTH("Swing arm, width of its sides", Group.SUSPENSION, "mm", "5", "120", "12", "45"),
    ARM_BEND("Swing arm, bend of its sides from the pivot", Group.SUSPENSION, "mm", "1", "600", "20", "250"),
    ARM_BEND_OUT("Swing arm, bend off the straight line outward", Group.SUSPENSION, "mm", "0", "80", "1", "30"),
    ARM_BEND_RADIUS("Swing arm, radius of the bend", Group.SUSPENSION, "mm", "0", "2000", "40", "400"),
    ARM_BOSS("Swing arm, outside of its pivot bosses", Group.SUSPENSION, "mm", "10", "120", "24", "60"),
    ARM_OVER("Swing arm, over its pivot bosses", Group.SUSPENSION, "mm", "15", "300", "50", "160"),
    ARM_BORE("Swing arm, bore of its pivot bosses", Group.SUSPENSION, "mm", "5", "100", "12", "45"),
    ARM_CROSS("Swing arm, outside of the tube across at the shock", Group.SUSPENSION, "mm", "8", "100", "14", "45"),
    ARM_UPPER_INSIDE(
            "Swing arm, inside between its upper members there", Group.SUSPENSION, "mm", "5", "250", "20", "110"),
    PIVOT_BORE("Front triangle, bores for the main pivot", Group.SUSPENSION, "mm", "5", "100", "12", "45"),

    CRANK("Crank length", Group.PARTS, "mm", "80", "250", "155", "180"),
    FEET_HELD("Pedals hold the feet", Group.PARTS, "", "0", "1", "0", "1"),
    SADDLE_CLAMP("Saddle clamp above the foot of the seat tube", Group.PARTS, "mm", "200", "1200", "500", "850"),
    SEATPOST("Seatpost, lower end to saddle clamp", Group.PARTS, "mm", "80", "700", "250", "500"),
    SEATPOST_MARK("Least insertion by the seatpost's mark", Group.PARTS, "mm", "20", "400", "60", "160"),
    SEATPOST_DEPTH("Free depth of the seat tube", Group.PARTS, "mm", "40", "900", "100", "500"),
    SEAT_TUBE_BORE("Seat tube bore as reamed for the seatpost", Group.PARTS, "mm", "15", "60", "25", "35"),
    HEAD_TUBE_SEATS("Head tube seats as reamed for the headset", Group.PARTS, "mm", "20", "80", "30", "57"),

    SADDLE_HEIGHT("Saddle height, shell to saddle along the seat tube", Group.FIT, "mm", "300", "1100", "520", "860"),
    SADDLE_SETBACK("Saddle tip behind the shell", Group.FIT, "mm", "-250", "300", "-40", "130"),
    SADDLE_TO_BAR("Saddle tip to the bar's middle", Group.FIT, "mm", "200", "1000", "400", "700"),
    SADDLE_OVER_BAR("Saddle over the bar's middle", Group.FIT, "mm", "-300", "300", "-120", "150"),
    SADDLE_STACK("Saddle's top above its clamp", Group.FIT, "mm", "10", "150", "30", "65"),
    UPPER_STACK("Upper headset stack", Group.FIT, "mm", "0", "80", "0", "30"),
    SPACERS("Spacers under the stem", Group.FIT, "mm", "0", "200", "0", "50"),
    STEM_HEIGHT("Stem's height on the steerer", Group.FIT, "mm", "10", "150", "25", "50"),
    STEM_LENGTH("Stem, steerer to bar", Group.FIT, "mm", "0", "250", "30", "130"),
    STEM_RISE("Stem's rise against the square to the steerer", Group.FIT, "°", "-45", "80", "-20", "40"),

    DROPOUT_MASS("Mass of the dropouts", Group.MASS, "kg", "0.01", "2", "0.08", "0.4"),
    WELD_MASS("Mass of welds or fillets", Group.MASS, "kg", "0", "1", "0.01", "0.2"),
    SMALL_PARTS_MASS("Mass of small parts", Group.MASS, "kg", "0", "2", "0.01", "0.3"),
    PIVOT_MASS("Mass of pivot parts", Group.MASS, "kg", "0", "2", "0.08", "0.4"),
    ARM_WELD_MASS("Mass of the swing arm's welds", Group.MASS, "kg", "0", "1", "0.01", "0.2"),
    ARM_PARTS_MASS(
            "Mass of the swing arm's bridge, cross tube and small parts", Group.MASS, "kg", "0", "2", "0.02", "0.4");

    /** Where an input stands on the sheet. */
    public enum Group {
        LAYOUT("Layout", ""),
        NODES("Nodes", ""),
        TUBES("Tubes", ""),
        BUTTS(
                "Butted tubes",
                "Empty for a plain tube. The wall given above is that of the butt at the first end, and of both where no"
                        + " other is given."),
        FORMED(
                "Formed ends",
                "Empty where an end stays round. The perimeter is kept, so the other axis follows. The zone is measured"
                        + " from the tube's end."),
        STAYS(
                "Bends and dropouts of the stays",
                "Empty for straight stays and the shop's usual dropouts: a plate of 6 mm, 25 mm deep in the stay, whose"
                        + " tube ends 18 mm from the axle, 4 mm outside its face. A bend is given as the corner its"
                        + " straight parts would meet in."),
        SUSPENSION(
                "Suspension",
                "Empty for a frame without a swing arm. The swing arm is drawn with nothing on it. Where the shock's eye on"
                        + " the frame is not given, the higher place is taken at which the travel uses the whole stroke."
                        + " The bridge lies on the line from pivot to axle. Depth is seen from the side, width from"
                        + " above. Sides are straight from the pivot to the dropout, or bent once, outward; they end at the"
                        + " dropout as stays do. Bosses begin at the inside of the sides. Where the sides are round tubes,"
                        + " chainstay and seatstay above are the arm's lower and upper members; with the tube across at the"
                        + " shock they are cut and weighed."),
        PARTS("Rider's parts", ""),
        FIT(
                "Fit sheet",
                "Where the builder decided that saddle and bar stand; empty where nothing was decided. Heights are"
                        + " measured to the saddle's top, lengths from its tip, and the bar in its middle at the stem."
                        + " Millimetres, not centimetres or inches."),
        MASS("Mass", "");

        private final String word;
        private final String hint;

        Group(String word, String hint) {
            this.word = word;
            this.hint = hint;
        }

        public String word() {
            return word;
        }

        /** What leaving it empty means. */
        public String hint() {
            return hint;
        }

        /** Whether most frames need none of it, so that it is folded away. */
        public boolean optional() {
            return !hint.isEmpty();
        }

        /** Whether a field of the form belongs to it. */
        public boolean holds(String field) {
            return Arrays.stream(GeometryInput.values())
                    .anyMatch(input -> input.group == this && field.equals("geometry." + input.code()));
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

    /** An amount of it in words, as sentences carry it here. */
    String written(double amount) {
        return DecimalSign.COMMA.write(Nominal.plain(BigDecimal.valueOf(amount)))
                + (unit().isEmpty() || unit().equals("°") ? unit() : " " + unit());
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
