package org.trammel.calc.metrology;

import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.metrology.PointReadings.AxisPoint;
import org.trammel.calc.metrology.PointReadings.ProbedPoint;

/** Makes the model of a frame from points in space. */
final class PointModel {

    private final List<Quantity> quantities = new ArrayList<>();

    private PointModel() {}

    static FrameModel of(PointReadings readings) {
        return new PointModel().build(readings);
    }

    private FrameModel build(PointReadings readings) {
        List<FramePart> parts = new ArrayList<>();
        Datum.Source datum = Datum.Faces.of(spots(readings.driveFace()), spots(readings.nonDriveFace()));
        List<Spot> head = axis(readings.headTube());
        List<Spot> seat = axis(readings.seatTube());
        parts.add(new FramePart.Tubes(head, seat));
        List<Spot> driveDropout = spots(readings.driveDropout());
        List<Spot> nonDriveDropout = spots(readings.nonDriveDropout());
        ProbedPoint drive = readings.driveAxleEnd();
        ProbedPoint nonDrive = readings.nonDriveAxleEnd();
        Spot driveEnd = drive == null ? null : spot(drive);
        Spot nonDriveEnd = nonDrive == null ? null : spot(nonDrive);
        if (!driveDropout.isEmpty() && !nonDriveDropout.isEmpty()) {
            parts.add(new FramePart.Axle(driveDropout, nonDriveDropout, List.of(), driveEnd, nonDriveEnd));
        }
        if (driveEnd != null && nonDriveEnd != null && !readings.shellBore().isEmpty()) {
            ProbedPoint top = readings.headTubeTop();
            parts.add(new FramePart.InSpace(
                    spots(readings.shellBore()),
                    driveEnd,
                    nonDriveEnd,
                    head,
                    seat,
                    top == null ? null : spot(top),
                    driveDropout,
                    nonDriveDropout,
                    readings.drawnAxle()));
        }
        return new FrameModel(quantities, datum, parts);
    }

    private List<Spot> spots(List<ProbedPoint> points) {
        return points.stream().map(this::spot).toList();
    }

    private List<Spot> axis(List<AxisPoint> points) {
        List<Spot> all = new ArrayList<>();
        for (AxisPoint point : points) {
            Spot first = spot(point.first());
            if (point.opposite() == null) {
                all.add(first);
            } else {
                Spot opposite = spot(point.opposite());
                all.add(new Spot(
                        first.name(), q -> first.at(q).plus(opposite.at(q)).times(0.5), point.ownVariance_mm2()));
            }
        }
        return all;
    }

    private Spot spot(ProbedPoint point) {
        int at = quantities.size();
        quantities.add(coordinate(point, ".x", point.x_mm()));
        quantities.add(coordinate(point, ".y", point.y_mm()));
        quantities.add(coordinate(point, ".z", point.z_mm()));
        return new Spot(point.name(), q -> new Vec(q[at], q[at + 1], q[at + 2]), point.ownVariance_mm2());
    }

    /** A shared cause acts on each coordinate by itself, so its name is one of each. */
    private static Quantity coordinate(ProbedPoint point, String axis, double value_mm) {
        return Quantity.coordinate(
                point.name() + axis,
                value_mm,
                point.gauge(),
                point.contributions().stream()
                        .map(one -> new Contribution(
                                one.kind(), one.u(), one.sharedAs() == null ? null : one.sharedAs() + axis))
                        .toList());
    }
}
