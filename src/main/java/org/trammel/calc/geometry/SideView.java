package org.trammel.calc.geometry;

import java.util.List;

/**
 * A frame seen from its drive side, as plain shapes in millimetres of the frame: front to the right, height upward. Who
 * draws it chooses scale, lines and words.
 *
 * @param geometry the frame
 * @param members tubes, those first that lie behind others or end at them
 * @param hubs round parts seen along their axis
 */
public record SideView(FrameGeometry geometry, List<Member> members, List<Hub> hubs) {

    public SideView {
        members = List.copyOf(members);
        hubs = List.copyOf(hubs);
    }

    /** What a shape stands for. */
    public enum Part {
        CHAINSTAY,
        SEATSTAY,
        SWING_ARM,
        SHOCK,
        TOP_TUBE,
        DOWN_TUBE,
        SEAT_TUBE,
        HEAD_TUBE,
        SHELL,
        REAR_AXLE,
        PIVOT,
        SHOCK_EYE
    }

    /**
     * A tube.
     *
     * @param from one end of its axis
     * @param to the other
     * @param fromWidth_mm how wide it is seen at the one end
     * @param toWidth_mm at the other
     */
    public record Member(Part part, Point from, Point to, double fromWidth_mm, double toWidth_mm) {

        /** A tube that is as wide from end to end. */
        static Member straight(Part part, Point from, Point to, double outside_mm) {
            return new Member(part, from, to, outside_mm, outside_mm);
        }

        /** Its outline, corner by corner. */
        public List<Point> corners() {
            Point along = to.minus(from).times(1 / to.distance_mm(from));
            Point across = new Point(-along.y_mm(), along.x_mm());
            return List.of(
                    from.plus(across.times(fromWidth_mm / 2)),
                    to.plus(across.times(toWidth_mm / 2)),
                    to.minus(across.times(toWidth_mm / 2)),
                    from.minus(across.times(fromWidth_mm / 2)));
        }
    }

    /** A round part, such as the shell. */
    public record Hub(Part part, Point centre, double outside_mm, double bore_mm) {}

    /**
     * Diameters as they are seen.
     *
     * @param headTube_mm outside of the head tube
     * @param downTube_mm outside of the down tube
     * @param downTubeAtShell_mm the down tube's height where it meets the shell: formed ends are lower or higher there
     * @param topTube_mm outside of the top tube
     * @param seatTube_mm outside of the seat tube
     * @param chainstay_mm outside of a chainstay
     * @param seatstay_mm outside of a seatstay
     * @param shell_mm outside of the shell
     * @param shellBore_mm its bore
     */
    public record Outsides(
            double headTube_mm,
            double downTube_mm,
            double downTubeAtShell_mm,
            double topTube_mm,
            double seatTube_mm,
            double chainstay_mm,
            double seatstay_mm,
            double shell_mm,
            double shellBore_mm) {}

    private static final double AXLE_MM = 24;
    private static final double AXLE_BORE_MM = 12;

    /**
     * A frame with stays.
     *
     * @param seatstayAtSeat where the seatstays meet the seat tube
     */
    public static SideView rigid(TubeAxes axes, Point seatstayAtSeat, Outsides outsides) {
        FrameGeometry geometry = axes.geometry();
        return new SideView(
                geometry,
                List.of(
                        Member.straight(Part.SEATSTAY, seatstayAtSeat, geometry.rearAxle(), outsides.seatstay_mm()),
                        Member.straight(
                                Part.CHAINSTAY, FrameGeometry.SHELL, geometry.rearAxle(), outsides.chainstay_mm()),
                        topTube(axes, outsides),
                        downTube(axes, outsides),
                        seatTube(geometry, outsides),
                        headTube(geometry, outsides)),
                List.of(shell(outsides), new Hub(Part.REAR_AXLE, geometry.rearAxle(), AXLE_MM, AXLE_BORE_MM)));
    }

    /**
     * A frame whose rear end swings about one pivot.
     *
     * @param pivot the main pivot
     * @param movingEye the shock's eye on the swing arm
     * @param fixedEye the one on the front triangle
     */
    public static SideView swinging(TubeAxes axes, Point pivot, Point movingEye, Point fixedEye, Outsides outsides) {
        FrameGeometry geometry = axes.geometry();
        return new SideView(
                geometry,
                List.of(
                        Member.straight(Part.SWING_ARM, pivot, geometry.rearAxle(), outsides.chainstay_mm()),
                        Member.straight(Part.SWING_ARM, movingEye, geometry.rearAxle(), outsides.seatstay_mm()),
                        Member.straight(Part.SWING_ARM, pivot, movingEye, outsides.seatstay_mm()),
                        topTube(axes, outsides),
                        downTube(axes, outsides),
                        seatTube(geometry, outsides),
                        headTube(geometry, outsides),
                        Member.straight(Part.SHOCK, movingEye, fixedEye, SHOCK_MM)),
                List.of(
                        shell(outsides),
                        new Hub(Part.REAR_AXLE, geometry.rearAxle(), AXLE_MM, AXLE_BORE_MM),
                        new Hub(Part.PIVOT, pivot, AXLE_MM, AXLE_BORE_MM),
                        new Hub(Part.SHOCK_EYE, movingEye, EYE_MM, EYE_BORE_MM),
                        new Hub(Part.SHOCK_EYE, fixedEye, EYE_MM, EYE_BORE_MM)));
    }

    private static final double SHOCK_MM = 38;
    private static final double EYE_MM = 18;
    private static final double EYE_BORE_MM = 8;

    private static Member topTube(TubeAxes axes, Outsides outsides) {
        return Member.straight(Part.TOP_TUBE, axes.topTubeAtSeat(), axes.topTubeAtHead(), outsides.topTube_mm());
    }

    private static Member downTube(TubeAxes axes, Outsides outsides) {
        return new Member(
                Part.DOWN_TUBE,
                FrameGeometry.SHELL,
                axes.downTubeAtHead(),
                outsides.downTubeAtShell_mm(),
                outsides.downTube_mm());
    }

    private static Member seatTube(FrameGeometry geometry, Outsides outsides) {
        return Member.straight(Part.SEAT_TUBE, geometry.seatTubeFoot(), geometry.seatTubeTop(), outsides.seatTube_mm());
    }

    private static Member headTube(FrameGeometry geometry, Outsides outsides) {
        return Member.straight(
                Part.HEAD_TUBE, geometry.headTubeBottom(), geometry.headTubeTop(), outsides.headTube_mm());
    }

    private static Hub shell(Outsides outsides) {
        return new Hub(Part.SHELL, FrameGeometry.SHELL, outsides.shell_mm(), outsides.shellBore_mm());
    }
}
