package org.trammel.calc.metrology;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.trammel.calc.metrology.PlateReadings.FacePoint;
import org.trammel.calc.metrology.PlateReadings.PlateDatum;
import org.trammel.calc.metrology.PlateReadings.SidePoint;
import org.trammel.calc.units.Answer;

/** Asks of readings on the plate whatever can be asked before they are reduced. */
final class PlateCheck {

    /** How far the measured axle may lie from the drawn one before the axes of the two settings are doubted. */
    private static final double DRAWN_WITHIN_MM = 30;

    private final PlateReadings readings;
    private final Asked asked = new Asked();

    private PlateCheck(PlateReadings readings) {
        this.readings = readings;
    }

    static Answer<FrameModel> of(PlateReadings readings) {
        return new PlateCheck(readings).model();
    }

    private Answer<FrameModel> model() {
        figures();
        doubled();
        if (!asked.met()) {
            return asked.refusal();
        }
        FrameModel model = PlateModel.of(readings);
        shapes(model);
        if (!asked.met()) {
            return asked.refusal();
        }
        return Answer.of(model);
    }

    private void figures() {
        if (readings.datum() instanceof PlateDatum.Faces faces) {
            faces.drive().forEach(point -> face("driveFace", point));
            faces.nonDrive().forEach(point -> face("nonDriveFace", point));
        } else if (readings.datum() instanceof PlateDatum.Post post) {
            centre("datum", post.centre());
            asked.holds(
                    post.tilt_rad() >= 0 && post.tilt_rad() < 0.1,
                    "datum",
                    "The uncertainty of how truly the shell sits on its post is not between 0 and 0.1 rad.");
        }
        readings.headTube().forEach(station -> station("headTube", station));
        readings.seatTube().forEach(station -> station("seatTube", station));
        asked.holds(
                !readings.headTube().isEmpty()
                        || !readings.seatTube().isEmpty()
                        || readings.axle() != null
                        || readings.stays() != null
                        || readings.gaps() != null
                        || readings.side() != null,
                "readings",
                "Nothing but the datum was read.");
        rear();
        PlateReadings.SideReadings side = readings.side();
        if (side != null) {
            side("side", side.shell());
            side("side", side.rearAxle());
            side.headTube().forEach(point -> side("side", point));
            side.seatTube().forEach(point -> side("side", point));
            asked.holds(
                    Double.isFinite(side.drawnAxleY_mm()) && side.drawnAxleX_mm() < 0,
                    "side",
                    "The rear axle of the drawing does not lie behind the shell.");
        }
    }

    private void rear() {
        PlateReadings.AxleReadings axle = readings.axle();
        if (axle != null) {
            asked.holds(
                    !axle.driveFace().isEmpty() && !axle.nonDriveFace().isEmpty(),
                    "axle",
                    "One dropout was not read: the middle of the axle lies between both inner faces.");
            place("axle", "the axle", axle.x_mm(), axle.y_mm());
            axle.driveFace().forEach(reading -> asked.reading("axle", reading));
            axle.nonDriveFace().forEach(reading -> asked.reading("axle", reading));
            axle.insideWidths().forEach(width -> length("axle", width, PlateLengths.AXLE_WIDTH));
        }
        PlateReadings.StayReadings stays = readings.stays();
        if (stays != null) {
            length("stays", stays.drive(), PlateLengths.CHAINSTAY);
            length("stays", stays.nonDrive(), PlateLengths.CHAINSTAY);
        }
        PlateReadings.GapReadings gaps = readings.gaps();
        if (gaps != null) {
            List.of(gaps.fore(), gaps.aft(), gaps.up(), gaps.down())
                    .forEach(gap -> length("dropouts", gap, PlateLengths.GAP));
            asked.within("dropouts", "span of the gaps", gaps.span_mm(), 10, 200);
        }
    }

    private void length(String input, RawReading reading, PlateLengths within) {
        asked.reading(input, reading);
        asked.within(input, "reading " + reading.name(), reading.value_mm(), within.least_mm(), within.most_mm());
    }

    private void face(String input, FacePoint point) {
        place(input, point.height().name(), point.x_mm(), point.y_mm());
        asked.reading(input, point.height());
    }

    private void station(String input, AxisStation station) {
        place(input, station.height().top().name(), station.x_mm(), station.y_mm());
        centre(input, station.height());
    }

    private void side(String input, SidePoint point) {
        centre(input, point.first());
        centre(input, point.second());
    }

    private void place(String input, String name, double x_mm, double y_mm) {
        asked.holds(
                Double.isFinite(x_mm) && Double.isFinite(y_mm) && Math.hypot(x_mm, y_mm) < 3000,
                input,
                "The place of " + name + " in the side view is no length within 3 m of the shell.");
    }

    private void centre(String input, CentreHeight height) {
        height.heights().forEach(reading -> asked.reading(input, reading));
        if (height.bottom() != null) {
            asked.holds(
                    height.top().value_mm() > height.bottom().value_mm(),
                    input,
                    "The upper side, " + height.top().name() + ", lies no higher than the lower, "
                            + height.bottom().name() + ": the two may be exchanged.");
        } else if (height.diameter() != null) {
            asked.sharedReading(input, height.diameter());
            asked.within(
                    input,
                    "diameter " + height.diameter().name(),
                    height.diameter().value_mm(),
                    2,
                    120);
        }
    }

    /** The same place read as the same figure is one reading typed twice; another figure there is a second reading. */
    private void doubled() {
        Set<List<Double>> seen = new HashSet<>();
        List<AxisStation> all = new ArrayList<>(readings.headTube());
        all.addAll(readings.seatTube());
        for (AxisStation station : all) {
            once(
                    seen,
                    "stations",
                    "station " + station.height().top().name(),
                    List.of(station.x_mm(), station.y_mm(), station.height().height_mm()));
        }
        if (readings.datum() instanceof PlateDatum.Faces faces) {
            List<FacePoint> points = new ArrayList<>(faces.drive());
            points.addAll(faces.nonDrive());
            for (FacePoint point : points) {
                once(
                        seen,
                        "datum",
                        "point " + point.height().name(),
                        List.of(point.x_mm(), point.y_mm(), point.height().value_mm()));
            }
        }
    }

    private void once(Set<List<Double>> seen, String input, String what, List<Double> place) {
        asked.holds(
                seen.add(place),
                input,
                "The " + what + " has place and height of another to the last digit: read it again, or delete it.");
    }

    private void shapes(FrameModel model) {
        double[] q = Propagation.values(model.quantities());
        Shape shape = new Shape(asked, q);
        if (model.datum() instanceof Datum.Faces faces && !shape.shell(faces)) {
            return;
        }
        Datum datum = model.datum().at(q);
        asked.holds(
                datum.normal().z() > 0.9,
                "datum",
                datum.normal().z() < 0
                        ? "The drive-side face would be the lower one, although the "
                                + (readings.driveSideUp() ? "drive" : "non-drive")
                                + " side is said to lie up: sides or faces are exchanged."
                        : "The shell would stand more than 25° off the plate's upright: read its faces again.");
        if (!asked.met()) {
            return;
        }
        for (FramePart part : model.parts()) {
            if (part instanceof FramePart.Tubes tubes) {
                shape.axis("headTube", "head tube", tubes.head(), datum);
                shape.axis("seatTube", "seat tube", tubes.seat(), datum);
            } else if (part instanceof FramePart.Axle axle) {
                shape.dropouts(axle.drive(), axle.nonDrive(), datum);
            } else if (part instanceof FramePart.Side side) {
                sideShape(side, q);
            }
        }
    }

    private void sideShape(FramePart.Side side, double[] q) {
        double measured = side.axle().at(q).minus(side.shell().at(q)).length();
        double drawn = Math.hypot(side.drawnX_mm(), side.drawnY_mm());
        asked.holds(
                Math.abs(measured - drawn) <= DRAWN_WITHIN_MM,
                "side",
                "The rear axle would lie " + Figure.written(measured) + " mm from the shell, on the drawing it lies "
                        + Figure.written(drawn) + " mm from it."
                        + Asked.inches(measured, Math.abs(Asked.fromInches(measured) - drawn) <= DRAWN_WITHIN_MM));
        straight("head tube", side.head(), q, true);
        straight("seat tube", side.seat(), q, false);
    }

    private void straight(String tube, List<Spot> spots, double[] q, boolean needed) {
        if (spots.isEmpty() && !needed) {
            return;
        }
        boolean apart = spots.size() >= 2
                && spots.get(spots.size() - 1).at(q).minus(spots.get(0).at(q)).length() >= 20;
        asked.holds(
                apart,
                "side",
                "The " + tube
                        + " needs two centres in the side view, its lower and its upper end, 20 mm apart or more.");
    }
}
