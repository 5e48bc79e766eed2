package org.trammel.shop.alignment;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.metrology.PointReadings;
import org.trammel.calc.metrology.PointReadings.AxisPoint;
import org.trammel.calc.metrology.PointReadings.DrawnAxle;
import org.trammel.calc.metrology.PointReadings.ProbedPoint;

/** Makes the readings of a frame in space out of the points of a sheet. */
final class PointForm {

    private final Doubts doubts;
    private final Places places;
    private final List<RawLine> lines;

    PointForm(Doubts doubts, Places places, List<RawLine> standing) {
        this.doubts = doubts;
        this.places = places;
        this.lines = standing.stream().filter(RawLine::point).toList();
    }

    PointReadings readings() {
        return new PointReadings(
                points(Feature.DRIVE_FACE),
                points(Feature.NON_DRIVE_FACE),
                points(Feature.SHELL_BORE),
                axis(Feature.HEAD_TUBE, Feature.HEAD_TUBE_ACROSS),
                axis(Feature.SEAT_TUBE, Feature.SEAT_TUBE_ACROSS),
                points(Feature.DRIVE_DROPOUT),
                points(Feature.NON_DRIVE_DROPOUT),
                one(Feature.DRIVE_AXLE_END),
                one(Feature.NON_DRIVE_AXLE_END),
                one(Feature.HEAD_TUBE_TOP),
                places.drawn()
                        ? new DrawnAxle(places.axle().x_mm(), places.axle().y_mm())
                        : null);
    }

    private List<ProbedPoint> points(Feature feature) {
        return lines(feature).stream().map(this::point).toList();
    }

    private @Nullable ProbedPoint one(Feature feature) {
        return points(feature).stream().findFirst().orElse(null);
    }

    private List<AxisPoint> axis(Feature on, Feature across) {
        List<RawLine> opposite = lines(across);
        return lines(on).stream()
                .map(line -> new AxisPoint(
                        point(line),
                        opposite.stream()
                                .filter(other -> other.name().equalsIgnoreCase(line.name()))
                                .map(this::point)
                                .findFirst()
                                .orElse(null)))
                .toList();
    }

    private List<RawLine> lines(Feature feature) {
        return lines.stream().filter(line -> line.spot().equals(feature.name())).toList();
    }

    private ProbedPoint point(RawLine line) {
        return new ProbedPoint(
                Feature.valueOf(line.spot()).words() + ", " + line.name(),
                figure(line.x_mm()),
                figure(line.y_mm()),
                figure(line.mm()),
                line.gauge(),
                doubts.point(line));
    }

    private static double figure(@Nullable BigDecimal mm) {
        return Objects.requireNonNull(mm).doubleValue();
    }
}
