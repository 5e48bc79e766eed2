package org.trammel.shop.alignment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.Point;
import org.trammel.calc.metrology.AxisStation;
import org.trammel.calc.metrology.CentreHeight;
import org.trammel.calc.metrology.PlateReadings;
import org.trammel.calc.metrology.PlateReadings.FacePoint;
import org.trammel.calc.metrology.PlateReadings.PlateDatum;
import org.trammel.calc.metrology.RawReading;

/** Makes the readings of a frame on the plate out of the figures of a sheet. What is read by halves is left out, and said. */
final class PlateForm {

    private final Doubts doubts;
    private final TableSetUp setUp;
    private final Places places;
    private final String metal;
    private final Map<String, RawLine> lines;
    private final @Nullable BigDecimal post;
    private final double span_mm;

    PlateForm(
            Doubts doubts,
            TableSetUp setUp,
            Places places,
            String metal,
            List<RawLine> standing,
            @Nullable BigDecimal post,
            double span_mm) {
        this.doubts = doubts;
        this.setUp = setUp;
        this.places = places;
        this.metal = metal;
        this.lines = standing.stream().collect(Collectors.toMap(RawLine::spot, line -> line));
        this.post = post;
        this.span_mm = span_mm;
    }

    PlateReadings readings() {
        return new PlateReadings(
                datum(),
                setUp.driveUp(),
                setUp.base() == TableSetUp.Base.TUBE
                        ? axis(
                                Spot.HEAD_LOW,
                                head(-half()),
                                Spot.HEAD_HIGH,
                                head(half()),
                                diameter("head tube", setUp.headDiameter_mm()))
                        : axis(
                                Spot.MANDREL_LOW,
                                head(-half()),
                                Spot.MANDREL_HIGH,
                                head(half()),
                                diameter("mandrel", setUp.mandrelDiameter_mm())),
                axis(
                        Spot.SEAT_LOW,
                        places.onSeatTube(setUp.seatLow_mm().doubleValue()),
                        Spot.SEAT_HIGH,
                        places.onSeatTube(setUp.seatHigh_mm().doubleValue()),
                        diameter("seat tube", setUp.seatDiameter_mm())),
                axle(),
                both(Spot.STAY_DRIVE, Spot.STAY_OTHER)
                        ? new PlateReadings.StayReadings(length(Spot.STAY_DRIVE), length(Spot.STAY_OTHER))
                        : null,
                both(Spot.GAP_FORE, Spot.GAP_AFT) && both(Spot.GAP_UP, Spot.GAP_DOWN)
                        ? new PlateReadings.GapReadings(
                                length(Spot.GAP_FORE),
                                length(Spot.GAP_AFT),
                                length(Spot.GAP_UP),
                                length(Spot.GAP_DOWN),
                                span_mm)
                        : null,
                side());
    }

    private PlateReadings.@Nullable SideReadings side() {
        boolean frame =
                inBoth("SIDE_SHELL") && inBoth("SIDE_AXLE") && inBoth("SIDE_HEAD_LOW") && inBoth("SIDE_HEAD_HIGH");
        if (!setUp.sideView() || !frame) {
            return null;
        }
        return new PlateReadings.SideReadings(
                turned("SIDE_SHELL"),
                turned("SIDE_AXLE"),
                List.of(turned("SIDE_HEAD_LOW"), turned("SIDE_HEAD_HIGH")),
                inBoth("SIDE_SEAT_LOW") && inBoth("SIDE_SEAT_HIGH")
                        ? List.of(turned("SIDE_SEAT_LOW"), turned("SIDE_SEAT_HIGH"))
                        : List.of(),
                places.axle().x_mm(),
                places.axle().y_mm());
    }

    private boolean inBoth(String name) {
        return both(Spot.valueOf(name + "_1"), Spot.valueOf(name + "_2"));
    }

    private PlateReadings.SidePoint turned(String name) {
        return new PlateReadings.SidePoint(
                CentreHeight.at(height(Spot.valueOf(name + "_1"))), CentreHeight.at(height(Spot.valueOf(name + "_2"))));
    }

    private double half() {
        return setUp.base_mm().doubleValue() / 2;
    }

    private Point head(double above_mm) {
        return places.onHeadTube(above_mm);
    }

    private PlateDatum datum() {
        if (setUp.datum() == TableSetUp.Datum.FACES) {
            return new PlateDatum.Faces(face("FACE_DRIVE"), face("FACE_OTHER"));
        }
        return new PlateDatum.Post(
                CentreHeight.at(post == null ? height(Spot.POST) : doubts.post(post)), doubts.tilt_rad());
    }

    private List<FacePoint> face(String name) {
        return Spot.startingWith(name).stream()
                .filter(spot -> lines.containsKey(spot.name()))
                .map(spot -> new FacePoint(
                        places.faceRadius_mm() * Math.cos(spot.round_rad()),
                        places.faceRadius_mm() * Math.sin(spot.round_rad()),
                        height(spot)))
                .toList();
    }

    private List<AxisStation> axis(Spot low, Point lowAt, Spot high, Point highAt, @Nullable RawReading diameter) {
        return both(low, high) && under(low) && under(high)
                ? List.of(station(low, lowAt, diameter), station(high, highAt, diameter))
                : List.of();
    }

    /** Nothing more is wanted of a place that is read from one side. */
    private boolean under(Spot spot) {
        return !setUp.bothSides()
                || spot.below().map(Spot::name).map(lines::containsKey).orElse(true);
    }

    private AxisStation station(Spot spot, Point at, @Nullable RawReading diameter) {
        Spot below = setUp.bothSides() ? spot.below().orElse(null) : null;
        if (below != null) {
            return new AxisStation(
                    at.x_mm(),
                    at.y_mm(),
                    CentreHeight.between(
                            doubts.height(spot, line(spot), metal, true),
                            doubts.height(below, line(below), metal, true)));
        }
        RawReading height = height(spot);
        return new AxisStation(
                at.x_mm(),
                at.y_mm(),
                diameter == null ? CentreHeight.at(height) : CentreHeight.above(height, diameter));
    }

    private @Nullable RawReading diameter(String of, @Nullable BigDecimal diameter) {
        return diameter == null ? null : doubts.diameter("diameter of the " + of, diameter.doubleValue());
    }

    private PlateReadings.@Nullable AxleReadings axle() {
        if (!both(Spot.AXLE_DRIVE, Spot.AXLE_OTHER)) {
            return null;
        }
        List<RawReading> widths = new ArrayList<>();
        Spot.startingWith("AXLE_WIDTH").stream()
                .filter(spot -> lines.containsKey(spot.name()))
                .forEach(spot -> widths.add(length(spot)));
        return new PlateReadings.AxleReadings(
                places.axle().x_mm(),
                places.axle().y_mm(),
                List.of(height(Spot.AXLE_DRIVE)),
                List.of(height(Spot.AXLE_OTHER)),
                widths);
    }

    private boolean both(Spot one, Spot other) {
        return lines.containsKey(one.name()) && lines.containsKey(other.name());
    }

    private RawReading height(Spot spot) {
        return doubts.height(spot, line(spot), metal);
    }

    private RawReading length(Spot spot) {
        return doubts.length(spot, line(spot), metal);
    }

    private RawLine line(Spot spot) {
        return java.util.Objects.requireNonNull(lines.get(spot.name()));
    }
}
