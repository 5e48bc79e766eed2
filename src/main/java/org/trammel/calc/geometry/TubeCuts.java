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
        FormedEnd atHead = tubes.formed().get(FormedPlace.DOWN_TUBE_AT_HEAD);
        FormedEnd atShell = tubes.formed().get(FormedPlace.DOWN_TUBE_AT_SHELL);
        return new PieceCut(FrameTube.DOWN_TUBE, stock, axes.downTube_mm(), rules)
                .mitreOne(
                        "head tube",
                        tubes.headTubeOutside_mm(),
                        EndFrame.of(rearward, up),
                        up,
                        one(stock, FormedPlace.DOWN_TUBE_AT_HEAD))
                .mitreTwo(
                        "shell",
                        tubes.shellOutside_mm(),
                        EndFrame.of(rearward.times(-1), SHELL_AXIS),
                        SHELL_AXIS,
                        two(stock, FormedPlace.DOWN_TUBE_AT_SHELL))
                .formedOne(atHead)
                .formedTwo(atShell)
                .piece();
    }

    /** What is cut at the first end: the oval it is formed to, or the round tube. */
    private Section one(TubeStock stock, FormedPlace place) {
        return section(stock, place, stock.profile().wallAtOne_mm());
    }

    private Section two(TubeStock stock, FormedPlace place) {
        return section(stock, place, stock.profile().wallAtTwo_mm());
    }

    private Section section(TubeStock stock, FormedPlace place, double wall_mm) {
        FormedEnd end = tubes.formed().get(place);
        return end == null ? Section.round(stock.outside_mm(), wall_mm) : place.section(end, wall_mm);
    }

    Answer<CutPiece> topTube() {
        SpacePoint rearward =
                flat(axes.topTubeAtSeat().minus(axes.topTubeAtHead())).unit();
        SpacePoint down = flat(axes.geometry().down());
        SpacePoint seatDown = flat(axes.geometry().seatTubeUp()).times(-1);
        TubeStock stock = tubes.topTube();
        return new PieceCut(FrameTube.TOP_TUBE, stock, axes.topTube_mm(), rules)
                .mitreOne(
                        "head tube",
                        tubes.headTubeOutside_mm(),
                        EndFrame.of(rearward, down),
                        down,
                        one(stock, FormedPlace.TOP_TUBE_AT_HEAD))
                .mitreTwo(
                        "seat tube",
                        tubes.seatTube().outside_mm(),
                        EndFrame.of(rearward.times(-1), seatDown),
                        seatDown,
                        two(stock, FormedPlace.TOP_TUBE_AT_SEAT))
                .formedOne(tubes.formed().get(FormedPlace.TOP_TUBE_AT_HEAD))
                .formedTwo(tubes.formed().get(FormedPlace.TOP_TUBE_AT_SEAT))
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
                        flat(geometry.seatTubeFoot()),
                        one(tubes.seatTube(), FormedPlace.SEAT_TUBE_AT_SHELL))
                .formedOne(tubes.formed().get(FormedPlace.SEAT_TUBE_AT_SHELL))
                .piece();
    }

    Answer<CutPiece> chainstay(StaySet stays) {
        BentStay path = stays.chainstayPath();
        TubeStock stock = stays.chainstay();
        EndFrame front = EndFrame.of(path.atFront(), SHELL_AXIS);
        // the path begins on the shell's surface, the setback is counted from its axis
        double toAxis_mm = tubes.shellOutside_mm() / 2 / Math.sin(path.atFront().angleTo_rad(SHELL_AXIS));
        return new PieceCut(FrameTube.CHAINSTAY, stock, path.developed_mm() + toAxis_mm, rules)
                .mitreOne(
                        "shell", tubes.shellOutside_mm(), front, SHELL_AXIS, one(stock, FormedPlace.CHAINSTAY_AT_SHELL))
                .formedOne(tubes.formed().get(FormedPlace.CHAINSTAY_AT_SHELL))
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
