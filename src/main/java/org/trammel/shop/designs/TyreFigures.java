package org.trammel.shop.designs;

import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.units.Answer;

/** The room that the rear tyre has beside what holds its wheel: chainstays and seatstays, or a swing arm. */
final class TyreFigures {

    private final GivenInputs in;
    private final ComputedFrame frame;
    private final GateLimits limits;

    TyreFigures(GivenInputs in, ComputedFrame frame, GateLimits limits) {
        this.in = in;
        this.frame = frame;
        this.limits = limits;
    }

    List<Answer<List<CheckFigure>>> all() {
        boolean swings = in.has(GeometryInput.PIVOT_AHEAD);
        List<Answer<List<CheckFigure>>> figures = new ArrayList<>();
        figures.add(frame.geometry()
                .then(geometry -> new RearInputs(in).room(geometry, frame.tubes()))
                .then(room ->
                        made(swings ? "tyre to the sides of the swing arm" : "tyre to chainstay", room.room_mm())));
        figures.add(frame.geometry()
                .then(geometry -> new RearInputs(in).upperRoom(geometry, frame.tubes()))
                .then(room -> made(
                        swings ? "tyre to the upper members of the swing arm" : "tyre to seatstay", room.room_mm())));
        if (swings) {
            figures.add(frame.geometry().then(this::bridge));
        }
        return figures;
    }

    /** Both turn about the pivot together, so what is left between them is the same at every travel. */
    private Answer<List<CheckFigure>> bridge(FrameGeometry geometry) {
        return in.all(GeometryInput.ARM_BRIDGE, GeometryInput.ARM_BRIDGE_OUTSIDE)
                .then(there -> new RearInputs(in).arm(geometry))
                .then(arm -> made(
                        "tyre to the bridge of the swing arm",
                        arm.reach_mm()
                                - in.number(GeometryInput.ARM_BRIDGE)
                                - in.number(GeometryInput.ARM_BRIDGE_OUTSIDE) / 2
                                - in.number(GeometryInput.REAR_WHEEL_RADIUS)));
    }

    private Answer<List<CheckFigure>> made(String label, double room_mm) {
        return Answer.of(List.of(CheckFigure.atLeast(label, room_mm, limits.of("tyre.stays"))));
    }
}
