package org.trammel.calc.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

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
     * @param between where its width changes, in order from the one end; none where it changes evenly or not at all
     */
    public record Member(Part part, Point from, Point to, double fromWidth_mm, double toWidth_mm, List<Width> between) {

        public Member {
            between = List.copyOf(between);
        }

        /** A tube that is as wide from end to end. */
        static Member straight(Part part, Point from, Point to, double outside_mm) {
            return new Member(part, from, to, outside_mm, outside_mm, List.of());
        }

        /** Its outline, corner by corner: along its one side and back along the other. */
        public List<Point> corners() {
            Point along = to.minus(from).times(1 / length_mm());
            Point across = new Point(-along.y_mm(), along.x_mm());
            List<Width> widths = new ArrayList<>(List.of(new Width(0, fromWidth_mm)));
            widths.addAll(between);
            widths.add(new Width(length_mm(), toWidth_mm));
            List<Point> there = new ArrayList<>();
            List<Point> back = new ArrayList<>();
            for (Width one : widths) {
                Point at = from.plus(along.times(one.along_mm()));
                there.add(at.plus(across.times(one.width_mm() / 2)));
                back.add(0, at.minus(across.times(one.width_mm() / 2)));
            }
            there.addAll(back);
            return there;
        }

        private double length_mm() {
            return to.distance_mm(from);
        }

        /** Pressed at an end: as far as its mate hides it and from there, growing evenly, to where it is round. */
        private Member pressed(boolean atTo, double oval_mm, double mate_mm, double zone_mm) {
            double taken = between.stream()
                    .mapToDouble(one -> atTo ? one.along_mm() : length_mm() - one.along_mm())
                    .max()
                    .orElse(0);
            double round = mate_mm / 2 + zone_mm;
            if (taken + round > length_mm()) {
                return this;
            }
            List<Width> widths = new ArrayList<>(between);
            if (atTo) {
                widths.add(new Width(length_mm() - round, toWidth_mm));
                widths.add(new Width(length_mm() - mate_mm / 2, oval_mm));
                return new Member(part, from, to, fromWidth_mm, oval_mm, widths);
            }
            widths.add(0, new Width(round, fromWidth_mm));
            widths.add(0, new Width(mate_mm / 2, oval_mm));
            return new Member(part, from, to, oval_mm, toWidth_mm, widths);
        }
    }

    /** How wide a tube is seen at a place of its axis. */
    public record Width(double along_mm, double width_mm) {}

    /** A round part, such as the shell. */
    public record Hub(Part part, Point centre, double outside_mm, double bore_mm) {}

    /**
     * Diameters as they are seen.
     *
     * @param headTube_mm outside of the head tube
     * @param downTube_mm outside of the down tube
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

    /** The same with ends as they are formed: as high as the oval stands in the frame's plane. */
    public SideView formed(Map<FormedPlace, FormedEnd> ends) {
        double shell = hubs.stream()
                .filter(hub -> hub.part() == Part.SHELL)
                .mapToDouble(Hub::outside_mm)
                .findFirst()
                .orElse(0);
        return new SideView(
                geometry,
                members.stream()
                        .map(member -> {
                            Member pressed = member;
                            for (FormedPlace place : FormedPlace.values()) {
                                FormedEnd end = ends.get(place);
                                if (end != null && isOf(place, member)) {
                                    pressed = pressed.pressed(
                                            isAtItsEnd(place),
                                            end.inFramePlane_mm(),
                                            mate_mm(place, shell),
                                            end.zone_mm());
                                }
                            }
                            return pressed;
                        })
                        .toList(),
                hubs);
    }

    private static boolean isOf(FormedPlace place, Member member) {
        return switch (place) {
            case DOWN_TUBE_AT_HEAD, DOWN_TUBE_AT_SHELL -> member.part() == Part.DOWN_TUBE;
            case TOP_TUBE_AT_HEAD, TOP_TUBE_AT_SEAT -> member.part() == Part.TOP_TUBE;
            case SEAT_TUBE_AT_SHELL -> member.part() == Part.SEAT_TUBE;
            case CHAINSTAY_AT_SHELL -> member.part() == Part.CHAINSTAY;
        };
    }

    /** Down tube and top tube are drawn from their rear ends. */
    private static boolean isAtItsEnd(FormedPlace place) {
        return place == FormedPlace.DOWN_TUBE_AT_HEAD || place == FormedPlace.TOP_TUBE_AT_HEAD;
    }

    private double mate_mm(FormedPlace place, double shell_mm) {
        return switch (place) {
            case DOWN_TUBE_AT_HEAD, TOP_TUBE_AT_HEAD -> width_mm(Part.HEAD_TUBE);
            case TOP_TUBE_AT_SEAT -> width_mm(Part.SEAT_TUBE);
            case DOWN_TUBE_AT_SHELL, SEAT_TUBE_AT_SHELL, CHAINSTAY_AT_SHELL -> shell_mm;
        };
    }

    private double width_mm(Part part) {
        return members.stream()
                .filter(member -> member.part() == part)
                .mapToDouble(Member::toWidth_mm)
                .findFirst()
                .orElse(0);
    }

    private static final double SHOCK_MM = 38;
    private static final double EYE_MM = 18;
    private static final double EYE_BORE_MM = 8;

    private static Member topTube(TubeAxes axes, Outsides outsides) {
        return Member.straight(Part.TOP_TUBE, axes.topTubeAtSeat(), axes.topTubeAtHead(), outsides.topTube_mm());
    }

    private static Member downTube(TubeAxes axes, Outsides outsides) {
        return Member.straight(Part.DOWN_TUBE, FrameGeometry.SHELL, axes.downTubeAtHead(), outsides.downTube_mm());
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
