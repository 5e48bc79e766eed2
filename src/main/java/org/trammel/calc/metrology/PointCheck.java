package org.trammel.calc.metrology;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.trammel.calc.metrology.PointReadings.AxisPoint;
import org.trammel.calc.metrology.PointReadings.ProbedPoint;
import org.trammel.calc.units.Answer;

/** Asks of points in space whatever can be asked before they are reduced. */
final class PointCheck {

    private static final double BORE_LEAST_MM = 8;
    private static final double BORE_MOST_MM = 40;
    private static final double STAY_LEAST_MM = 200;
    private static final double STAY_MOST_MM = 900;

    private final PointReadings readings;
    private final Asked asked = new Asked();

    private PointCheck(PointReadings readings) {
        this.readings = readings;
    }

    static Answer<FrameModel> of(PointReadings readings) {
        return new PointCheck(readings).model();
    }

    private Answer<FrameModel> model() {
        points();
        if (!asked.met()) {
            return asked.refusal();
        }
        FrameModel model = PointModel.of(readings);
        shapes(model);
        if (!asked.met()) {
            return asked.refusal();
        }
        return Answer.of(model);
    }

    private void points() {
        Map<String, List<ProbedPoint>> all = new HashMap<>();
        all.put("driveFace", readings.driveFace());
        all.put("nonDriveFace", readings.nonDriveFace());
        all.put("shellBore", readings.shellBore());
        all.put("headTube", flat(readings.headTube()));
        all.put("seatTube", flat(readings.seatTube()));
        all.put("driveDropout", readings.driveDropout());
        all.put("nonDriveDropout", readings.nonDriveDropout());
        List<ProbedPoint> single = new ArrayList<>();
        for (ProbedPoint one :
                new ProbedPoint[] {readings.driveAxleEnd(), readings.nonDriveAxleEnd(), readings.headTubeTop()}) {
            if (one != null) {
                single.add(one);
            }
        }
        all.put("axle", single);
        Set<String> names = new HashSet<>();
        Map<List<Double>, String> places = new HashMap<>();
        all.keySet().stream()
                .sorted()
                .forEach(input -> all.get(input).forEach(point -> ask(input, point, names, places)));
        PointReadings.DrawnAxle drawn = readings.drawnAxle();
        asked.holds(
                drawn == null || drawn.x_mm() < 0 && Double.isFinite(drawn.y_mm()),
                "drawnAxle",
                "The rear axle of the drawing does not lie behind the shell.");
        asked.holds(
                readings.driveDropout().isEmpty() == readings.nonDriveDropout().isEmpty(),
                "dropouts",
                "One dropout was not read: the middle of the axle lies between both inner faces.");
    }

    private void ask(String input, ProbedPoint point, Set<String> names, Map<List<Double>, String> places) {
        asked.holds(
                names.add(point.name()),
                input,
                "The point " + point.name() + " is there twice: delete one, or name it anew.");
        boolean figures =
                Double.isFinite(point.x_mm()) && Double.isFinite(point.y_mm()) && Double.isFinite(point.z_mm());
        asked.holds(figures, input, "A coordinate of " + point.name() + " is no number.");
        String before = places.putIfAbsent(List.of(point.x_mm(), point.y_mm(), point.z_mm()), point.name());
        asked.holds(
                before == null,
                input,
                point.name() + " is " + before + " to the last digit: read it again, or delete one of them.");
        asked.doubt(input, point.name(), point.contributions());
    }

    private static List<ProbedPoint> flat(List<AxisPoint> axis) {
        List<ProbedPoint> all = new ArrayList<>();
        for (AxisPoint point : axis) {
            all.add(point.first());
            if (point.opposite() != null) {
                all.add(point.opposite());
            }
        }
        return all;
    }

    private void shapes(FrameModel model) {
        double[] q = Propagation.values(model.quantities());
        Shape shape = new Shape(asked, q);
        if (!shape.shell((Datum.Faces) model.datum())) {
            return;
        }
        Datum datum = model.datum().at(q);
        for (FramePart part : model.parts()) {
            if (part instanceof FramePart.Tubes tubes) {
                shape.axis("headTube", "head tube", tubes.head(), datum);
                shape.axis("seatTube", "seat tube", tubes.seat(), datum);
            } else if (part instanceof FramePart.Axle axle) {
                if (axle.planes()) {
                    shape.plane("driveDropout", "drive-side dropout", axle.drive());
                    shape.plane("nonDriveDropout", "non-drive-side dropout", axle.nonDrive());
                }
                shape.dropouts(axle.drive(), axle.nonDrive(), datum);
            } else if (part instanceof FramePart.InSpace space) {
                rear(space, q, datum);
            }
        }
        asked.holds(!model.told().isEmpty(), "readings", "Nothing but the datum was read, so no deviation follows.");
    }

    private void rear(FramePart.InSpace space, double[] q, Datum datum) {
        Vec end = space.driveEnd().at(q);
        Vec other = space.nonDriveEnd().at(q);
        boolean round = SideView.circle(datum, Spot.at(space.bore(), q), end)
                .filter(circle -> circle.radius_mm() >= BORE_LEAST_MM && circle.radius_mm() <= BORE_MOST_MM)
                .isPresent();
        if (!asked.holds(
                round,
                "shellBore",
                "The points of the shell's bore make no circle of " + Figure.written(BORE_LEAST_MM) + " to "
                        + Figure.written(BORE_MOST_MM)
                        + " mm radius: take three or more, spread round it, in millimetres.")) {
            return;
        }
        asked.holds(
                datum.normal().dot(end.minus(other)) > 0,
                "axle",
                "The drive-side end of the axle would lie on the non-drive side of the other: the two may be exchanged.");
        Vec shell = SideView.centre(datum, Spot.at(space.bore(), q), end);
        for (Vec one : List.of(end, other)) {
            asked.within(
                    "axle",
                    "distance of an axle end from the shell's axis",
                    one.minus(shell).across(datum.normal()).length(),
                    STAY_LEAST_MM,
                    STAY_MOST_MM);
        }
    }
}
