package org.trammel.calc.geometry;

import org.trammel.calc.units.Answer;

/** Where each tube of a frame begins and ends, and on what. */
final class TubeCuts {

    private static final SpacePoint SHELL_AXIS = SpacePoint.DRIVE_SIDE;

    private final TubeAxes axes;
    private final TubeSet tubes;
    private final SawRules rules;

    TubeCuts(TubeAxes axes, TubeSet tubes, SawRules rules) {
        this.axes = axes;
        this.tubes = tubes;
        this.rules = rules;
    }

    Answer<CutPiece> downTube() {
        SpacePoint rearward = flat(axes.downTubeAtHead()).unit().times(-1);
        SpacePoint up = flat(axes.geometry().down()).times(-1);
        TubeStock stock = tubes.downTube();
        double wall = stock.profile().wallAtTwo_mm();
        FormedEnd formed = tubes.downTubeAtShell();
        Section round = Section.round(stock.outside_mm(), wall);
        PieceCut cut = new PieceCut(FrameTube.DOWN_TUBE, stock, axes.downTube_mm(), rules)
                .mitreOne("head tube", tubes.headTubeOutside_mm(), EndFrame.of(rearward, up), up);
        EndFrame atShell = EndFrame.of(rearward.times(-1), SHELL_AXIS);
        return formed == null
                ? cut.mitreTwo("shell", tubes.shellOutside_mm(), atShell, SHELL_AXIS, round)
                        .piece()
                : cut.mitreTwo("shell", tubes.shellOutside_mm(), atShell, SHELL_AXIS, formed.onShell(wall))
                        .formed(formed, Joint.meeting(round, tubes.shellOutside_mm(), Math.PI / 2))
                        .piece();
    }

    Answer<CutPiece> topTube() {
        SpacePoint rearward =
                flat(axes.topTubeAtSeat().minus(axes.topTubeAtHead())).unit();
        SpacePoint down = flat(axes.geometry().down());
        SpacePoint seatDown = flat(axes.geometry().seatTubeUp()).times(-1);
        TubeStock stock = tubes.topTube();
        return new PieceCut(FrameTube.TOP_TUBE, stock, axes.topTube_mm(), rules)
                .mitreOne("head tube", tubes.headTubeOutside_mm(), EndFrame.of(rearward, down), down)
                .mitreTwo(
                        "seat tube",
                        tubes.seatTube().outside_mm(),
                        EndFrame.of(rearward.times(-1), seatDown),
                        seatDown,
                        Section.round(stock.outside_mm(), stock.profile().wallAtTwo_mm()))
                .piece();
    }

    Answer<CutPiece> seatTube() {
        FrameGeometry geometry = axes.geometry();
        SpacePoint up = flat(geometry.seatTubeUp());
        return new PieceCut(
                        FrameTube.SEAT_TUBE, tubes.seatTube(), geometry.layout().seatTube_mm(), rules)
                .mitreBeside(
                        "shell",
                        tubes.shellOutside_mm(),
                        EndFrame.of(up, SHELL_AXIS),
                        SHELL_AXIS,
                        flat(geometry.seatTubeFoot()))
                .piece();
    }

    Answer<CutPiece> chainstay(StaySet stays) {
        BentStay path = stays.chainstayPath();
        TubeStock stock = stays.chainstay();
        EndFrame front = EndFrame.of(path.atFront(), SHELL_AXIS);
        // the path begins on the shell's surface, the setback is counted from its axis
        double toAxis_mm = tubes.shellOutside_mm() / 2 / Math.sin(path.atFront().angleTo_rad(SHELL_AXIS));
        return new PieceCut(FrameTube.CHAINSTAY, stock, path.developed_mm() + toAxis_mm, rules)
                .mitreOne("shell", tubes.shellOutside_mm(), front, SHELL_AXIS)
                .endTwo(new EndCut.Slotted(DropoutSlot.in(stock.outside_mm(), path.atRear(), stays.plate())))
                .piece();
    }

    Answer<CutPiece> seatstay(StaySet stays) {
        BentStay path = stays.seatstayPath();
        TubeStock stock = stays.seatstay();
        SpacePoint seatDown = flat(axes.geometry().seatTubeUp()).times(-1);
        return new PieceCut(FrameTube.SEATSTAY, stock, path.developed_mm(), rules)
                .endOne(new EndCut.AsDrawn("seat tube", path.atFront().angleTo_rad(seatDown)))
                .endTwo(new EndCut.Slotted(DropoutSlot.in(stock.outside_mm(), path.atRear(), stays.plate())))
                .piece();
    }

    private static SpacePoint flat(Point side) {
        return SpacePoint.of(side, 0);
    }
}
