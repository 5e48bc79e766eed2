package org.trammel.calc.metrology;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.trammel.calc.metrology.PlateReadings.FacePoint;
import org.trammel.calc.metrology.PlateReadings.PlateDatum;
import org.trammel.calc.metrology.PlateReadings.SidePoint;

/** Makes the model of a frame on the plate: x and y as the drawing has them, z the height, turned to the drive side. */
final class PlateModel {

    private final PlateReadings readings;
    private final double up;
    private final List<Quantity> quantities = new ArrayList<>();
    private final Map<String, Integer> shared = new HashMap<>();

    private PlateModel(PlateReadings readings) {
        this.readings = readings;
        this.up = readings.driveSideUp() ? 1 : -1;
    }

    static FrameModel of(PlateReadings readings) {
        return new PlateModel(readings).build();
    }

    private FrameModel build() {
        List<FramePart> parts = new ArrayList<>();
        Datum.Source datum = datum();
        parts.add(new FramePart.Tubes(stations(readings.headTube()), stations(readings.seatTube())));
        PlateReadings.AxleReadings axle = readings.axle();
        if (axle != null) {
            parts.add(new FramePart.Axle(
                    heights(axle.x_mm(), axle.y_mm(), axle.driveFace()),
                    heights(axle.x_mm(), axle.y_mm(), axle.nonDriveFace()),
                    axle.insideWidths().stream()
                            .map(width -> take(width, Scale.INSIDE))
                            .toList(),
                    null,
                    null));
        }
        PlateReadings.StayReadings stays = readings.stays();
        if (stays != null) {
            parts.add(new FramePart.StayLengths(
                    take(stays.drive(), Scale.OUTSIDE), take(stays.nonDrive(), Scale.OUTSIDE), axle != null));
        }
        PlateReadings.GapReadings gaps = readings.gaps();
        if (gaps != null) {
            parts.add(new FramePart.Gaps(
                    take(gaps.fore(), Scale.INSIDE),
                    take(gaps.aft(), Scale.INSIDE),
                    take(gaps.up(), Scale.INSIDE),
                    take(gaps.down(), Scale.INSIDE),
                    gaps.span_mm()));
        }
        PlateReadings.SideReadings side = readings.side();
        if (side != null) {
            parts.add(new FramePart.Side(
                    spot(side.shell()),
                    spot(side.rearAxle()),
                    side.headTube().stream().map(this::spot).toList(),
                    side.seatTube().stream().map(this::spot).toList(),
                    side.drawnAxleX_mm(),
                    side.drawnAxleY_mm()));
        }
        return new FrameModel(quantities, datum, parts);
    }

    private Datum.Source datum() {
        if (readings.datum() instanceof PlateDatum.Faces faces) {
            return Datum.Faces.of(face(faces.drive()), face(faces.nonDrive()));
        }
        PlateDatum.Post post = (PlateDatum.Post) readings.datum();
        Height centre = height(post.centre());
        int ahead = tilt("tilt ahead", post.tilt_rad());
        int upwards = tilt("tilt upwards", post.tilt_rad());
        // The shell's axis, tilted; z is already turned to the drive side.
        return q -> new Datum(new Vec(q[ahead], q[upwards], 1).unit(), new Vec(0, 0, up * centre.at(q)));
    }

    private List<Spot> face(List<FacePoint> points) {
        return points.stream()
                .map(point -> spot(point.x_mm(), point.y_mm(), point.height()))
                .toList();
    }

    private List<Spot> heights(double x_mm, double y_mm, List<RawReading> all) {
        return all.stream().map(reading -> spot(x_mm, y_mm, reading)).toList();
    }

    private Spot spot(double x_mm, double y_mm, RawReading reading) {
        int at = take(reading, Scale.HEIGHT);
        return new Spot(reading.name(), q -> new Vec(x_mm, y_mm, up * q[at]), reading.ownVariance_mm2());
    }

    private List<Spot> stations(List<AxisStation> stations) {
        return stations.stream()
                .map(station -> {
                    Height height = height(station.height());
                    return new Spot(
                            station.height().top().name(),
                            q -> new Vec(station.x_mm(), station.y_mm(), up * height.at(q)),
                            station.height().ownVariance_mm2());
                })
                .toList();
    }

    private Spot spot(SidePoint point) {
        Height first = height(point.first());
        Height second = height(point.second());
        return new Spot(
                point.first().top().name(),
                q -> new Vec(first.at(q), second.at(q), 0),
                (point.first().ownVariance_mm2() + point.second().ownVariance_mm2()) / 2);
    }

    @FunctionalInterface
    private interface Height {
        double at(double[] q);
    }

    private Height height(CentreHeight centre) {
        int top = take(centre.top(), Scale.HEIGHT);
        if (centre.bottom() != null) {
            int bottom = take(centre.bottom(), Scale.HEIGHT);
            return q -> (q[top] + q[bottom]) / 2;
        }
        if (centre.diameter() != null) {
            int diameter =
                    shared.computeIfAbsent(centre.diameter().name(), name -> take(centre.diameter(), Scale.OUTSIDE));
            return q -> q[top] - q[diameter] / 2;
        }
        return q -> q[top];
    }

    private int take(RawReading reading, Scale scale) {
        quantities.add(Quantity.of(reading, scale));
        return quantities.size() - 1;
    }

    private int tilt(String name, double u_rad) {
        quantities.add(Quantity.tilt(name, u_rad));
        return quantities.size() - 1;
    }
}
