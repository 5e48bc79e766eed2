package org.trammel.shop.calculations;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.metrology.AlignmentReadings;
import org.trammel.calc.metrology.AxisStation;
import org.trammel.calc.metrology.CentreHeight;
import org.trammel.calc.metrology.Contribution;
import org.trammel.calc.metrology.PlateReadings;
import org.trammel.calc.metrology.PlateReadings.FacePoint;
import org.trammel.calc.metrology.PlateReadings.PlateDatum;
import org.trammel.calc.metrology.PointReadings;
import org.trammel.calc.metrology.PointReadings.AxisPoint;
import org.trammel.calc.metrology.PointReadings.DrawnAxle;
import org.trammel.calc.metrology.PointReadings.ProbedPoint;
import org.trammel.calc.metrology.RawReading;

/** From a request to the readings that are reduced; each reading is called by its place in the request. */
final class AlignmentForms {

    private final List<AlignmentRequest.Cause> usual;

    private AlignmentForms(List<AlignmentRequest.Cause> usual) {
        this.usual = usual;
    }

    static AlignmentReadings of(AlignmentRequest request) {
        NotComputed.boundedBy(AlignmentRequest.MOST_CAUSES, "causes", request.causes());
        AlignmentForms forms = new AlignmentForms(request.causes() == null ? List.of() : request.causes());
        if (request.plate() != null && request.points() == null) {
            return forms.plate(request.plate());
        }
        if (request.points() != null && request.plate() == null) {
            return forms.space(request.points());
        }
        throw NotComputed.input(
                "plate",
                "A frame is read over a plate or by points, "
                        + (request.plate() == null ? "and neither is given." : "not by both."));
    }

    private PlateReadings plate(AlignmentRequest.Plate plate) {
        return new PlateReadings(
                datum(plate),
                plate.driveSideUp() == null || plate.driveSideUp(),
                stations("plate.headTube", plate.headTube()),
                stations("plate.seatTube", plate.seatTube()),
                axle(plate.axle()),
                plate.stays() == null
                        ? null
                        : new PlateReadings.StayReadings(
                                reading(
                                        "plate.stays.driveMm",
                                        plate.stays().driveMm(),
                                        plate.stays().causes()),
                                reading(
                                        "plate.stays.nonDriveMm",
                                        plate.stays().nonDriveMm(),
                                        plate.stays().causes())),
                gaps(plate.gaps()),
                null);
    }

    private PlateDatum datum(AlignmentRequest.Plate plate) {
        AlignmentRequest.Post post = plate.post();
        boolean faces = plate.driveFace() != null || plate.nonDriveFace() != null;
        if ((post != null) == faces) {
            throw NotComputed.input(
                    "plate.post",
                    "The middle plane is told by post, or by driveFace with nonDriveFace; "
                            + (faces ? "not by both." : "neither is given."));
        }
        if (post != null) {
            return new PlateDatum.Post(
                    CentreHeight.at(reading("plate.post.heightMm", post.heightMm(), post.causes())),
                    Math.toRadians(NotComputed.or(post.tiltUDeg(), 0)));
        }
        return new PlateDatum.Faces(
                face("plate.driveFace", plate.driveFace()), face("plate.nonDriveFace", plate.nonDriveFace()));
    }

    private List<FacePoint> face(String at, @Nullable List<AlignmentRequest.Reading> readings) {
        List<FacePoint> points = new ArrayList<>();
        NotComputed.boundedBy(AlignmentRequest.MOST, at, readings);
        for (AlignmentRequest.Reading one : readings == null ? List.<AlignmentRequest.Reading>of() : readings) {
            points.add(new FacePoint(
                    one.xMm().doubleValue(),
                    one.yMm().doubleValue(),
                    reading(at + "[" + points.size() + "].heightMm", one.heightMm(), one.causes())));
        }
        return points;
    }

    private List<AxisStation> stations(String at, @Nullable List<AlignmentRequest.Reading> readings) {
        List<AxisStation> stations = new ArrayList<>();
        NotComputed.boundedBy(AlignmentRequest.MOST, at, readings);
        for (AlignmentRequest.Reading one : readings == null ? List.<AlignmentRequest.Reading>of() : readings) {
            String place = at + "[" + stations.size() + "].";
            if (one.underMm() != null && one.diameterMm() != null) {
                throw NotComputed.input(
                        place + "underMm", "The middle is told by underMm or by diameterMm, not by both.");
            }
            RawReading top = reading(place + "heightMm", one.heightMm(), one.causes());
            CentreHeight height = one.underMm() != null
                    ? CentreHeight.between(top, reading(place + "underMm", one.underMm(), one.causes()))
                    : one.diameterMm() != null
                            ? CentreHeight.above(top, reading(place + "diameterMm", one.diameterMm(), one.causes()))
                            : CentreHeight.at(top);
            stations.add(new AxisStation(one.xMm().doubleValue(), one.yMm().doubleValue(), height));
        }
        return stations;
    }

    private PlateReadings.@Nullable AxleReadings axle(AlignmentRequest.@Nullable Axle axle) {
        return axle == null
                ? null
                : new PlateReadings.AxleReadings(
                        axle.xMm().doubleValue(),
                        axle.yMm().doubleValue(),
                        all("plate.axle.driveFaceMm", axle.driveFaceMm(), axle.causes()),
                        all("plate.axle.nonDriveFaceMm", axle.nonDriveFaceMm(), axle.causes()),
                        all("plate.axle.insideWidthsMm", axle.insideWidthsMm(), axle.causes()));
    }

    private PlateReadings.@Nullable GapReadings gaps(AlignmentRequest.@Nullable Gaps gaps) {
        return gaps == null
                ? null
                : new PlateReadings.GapReadings(
                        reading("plate.gaps.foreMm", gaps.foreMm(), gaps.causes()),
                        reading("plate.gaps.aftMm", gaps.aftMm(), gaps.causes()),
                        reading("plate.gaps.upMm", gaps.upMm(), gaps.causes()),
                        reading("plate.gaps.downMm", gaps.downMm(), gaps.causes()),
                        gaps.spanMm().doubleValue());
    }

    private List<RawReading> all(
            String at, @Nullable List<BigDecimal> figures, @Nullable List<AlignmentRequest.Cause> causes) {
        List<RawReading> all = new ArrayList<>();
        NotComputed.boundedBy(AlignmentRequest.MOST, at, figures);
        for (BigDecimal figure : figures == null ? List.<BigDecimal>of() : figures) {
            all.add(reading(at + "[" + all.size() + "]", figure, causes));
        }
        return all;
    }

    private RawReading reading(String name, BigDecimal mm, @Nullable List<AlignmentRequest.Cause> causes) {
        return new RawReading(name, mm.doubleValue(), "", contributions(name, causes));
    }

    private List<Contribution> contributions(String name, @Nullable List<AlignmentRequest.Cause> causes) {
        NotComputed.boundedBy(AlignmentRequest.MOST_CAUSES, name + " causes", causes);
        return (causes == null ? usual : causes)
                .stream()
                        .map(cause -> cause.sharedAs() == null
                                ? Contribution.own(cause.kind(), cause.uMm().doubleValue())
                                : Contribution.shared(
                                        cause.kind(),
                                        cause.uMm().doubleValue(),
                                        NotComputed.named(cause.sharedAs(), "sharedAs")))
                        .toList();
    }

    private PointReadings space(AlignmentRequest.Space space) {
        if ((space.drawnAxleXMm() == null) != (space.drawnAxleYMm() == null)) {
            throw NotComputed.input("points.drawnAxleXMm", "The drawn axle has two coordinates, and one is given.");
        }
        return new PointReadings(
                points("points.driveFace", space.driveFace()),
                points("points.nonDriveFace", space.nonDriveFace()),
                points("points.shellBore", space.shellBore()),
                axis("points.headTube", space.headTube()),
                axis("points.seatTube", space.seatTube()),
                points("points.driveDropout", space.driveDropout()),
                points("points.nonDriveDropout", space.nonDriveDropout()),
                point("points.driveAxleEnd", space.driveAxleEnd()),
                point("points.nonDriveAxleEnd", space.nonDriveAxleEnd()),
                point("points.headTubeTop", space.headTubeTop()),
                space.drawnAxleXMm() == null || space.drawnAxleYMm() == null
                        ? null
                        : new DrawnAxle(
                                space.drawnAxleXMm().doubleValue(),
                                space.drawnAxleYMm().doubleValue()));
    }

    private List<ProbedPoint> points(String at, @Nullable List<AlignmentRequest.Spot> spots) {
        List<ProbedPoint> points = new ArrayList<>();
        NotComputed.boundedBy(AlignmentRequest.MOST, at, spots);
        for (AlignmentRequest.Spot spot : spots == null ? List.<AlignmentRequest.Spot>of() : spots) {
            points.add(probed(at + "[" + points.size() + "]", spot));
        }
        return points;
    }

    private List<AxisPoint> axis(String at, @Nullable List<AlignmentRequest.Spot> spots) {
        return points(at, spots).stream()
                .map(point -> new AxisPoint(point, null))
                .toList();
    }

    private @Nullable ProbedPoint point(String at, AlignmentRequest.@Nullable Spot spot) {
        return spot == null ? null : probed(at, spot);
    }

    private ProbedPoint probed(String name, AlignmentRequest.Spot spot) {
        return new ProbedPoint(
                name,
                spot.xMm().doubleValue(),
                spot.yMm().doubleValue(),
                spot.zMm().doubleValue(),
                "",
                contributions(name, spot.causes()));
    }
}
