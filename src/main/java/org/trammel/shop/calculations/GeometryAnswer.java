package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.ClosureOutcome;
import org.trammel.calc.geometry.Dimension;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.Point;
import org.trammel.calc.geometry.Sensitivity;
import org.trammel.calc.geometry.Substitution;
import org.trammel.calc.geometry.TubeAxes;

/** What comes of closing a frame. */
record GeometryAnswer(
        Outcome outcome,

        @Schema(description = "the outcome in words; empty where the frame is closed")
        String words,

        @Schema(description = "the frame, where it is closed") @Nullable
        Frame frame,

        @Schema(description = "figures beyond need, against what the others give")
        List<Surplus> surplus,

        @Schema(description = "figures that could be given up, the least change first")
        List<Offer> offers,

        @Schema(description = "what to add where too little is given")
        List<Missing> missing,

        @Schema(description = "other frames that fit what is given, further from usual ones")
        List<Frame> others,

        @Schema(description = "where joints were given") @Nullable
        Tubes tubes,

        List<Moved> changes,

        @Schema(description = "where other parts were asked about") @Nullable
        Substituted substituted) {

    enum Outcome {
        CLOSED,
        OVER_DETERMINED,
        UNDER_DETERMINED
    }

    @Schema(name = "PlanePoint", description = "ahead of and above the shell's centre")
    record PointMm(double xMm, double yMm) {

        static PointMm of(Point point) {
            return new PointMm(point.x_mm(), point.y_mm());
        }
    }

    record Frame(Dimensions dimensions, Nodes nodes) {

        static Frame of(FrameGeometry frame) {
            return new Frame(Dimensions.of(frame), Nodes.of(frame));
        }
    }

    record Nodes(
            PointMm headTubeTop,
            PointMm headTubeBottom,
            PointMm frontAxle,
            PointMm rearAxle,
            PointMm seatTubeFoot,
            PointMm seatTubeTop) {

        static Nodes of(FrameGeometry frame) {
            return new Nodes(
                    PointMm.of(frame.headTubeTop()),
                    PointMm.of(frame.headTubeBottom()),
                    PointMm.of(frame.frontAxle()),
                    PointMm.of(frame.rearAxle()),
                    PointMm.of(frame.seatTubeFoot()),
                    PointMm.of(frame.seatTubeTop()));
        }
    }

    @Schema(description = "values in the unit that the name of the figure says")
    record Surplus(String figure, double given, double computed, double residual, String words) {

        static Surplus of(ClosureOutcome.Surplus surplus) {
            Dimension dimension = surplus.dimension();
            return new Surplus(
                    Dimensions.name(dimension),
                    shown(dimension, surplus.given()),
                    shown(dimension, surplus.computed()),
                    shown(dimension, surplus.residual()),
                    surplus.words());
        }
    }

    @Schema(description = "values in the unit that the name of the figure says")
    record Offer(String figure, double given, double becomes, String words) {

        static Offer of(ClosureOutcome.Offer offer) {
            Dimension dimension = offer.dimension();
            return new Offer(
                    Dimensions.name(dimension),
                    shown(dimension, offer.given()),
                    shown(dimension, offer.becomes()),
                    offer.words());
        }
    }

    record Missing(int count, List<String> among, String words) {

        static Missing of(ClosureOutcome.Missing missing) {
            return new Missing(
                    missing.count(),
                    missing.among().stream().map(Dimensions::name).toList(),
                    missing.words());
        }
    }

    @Schema(description = "axes in the middle plane; angles are the interior ones of the front triangle")
    record Tubes(
            PointMm topTubeAtHead,
            PointMm downTubeAtHead,
            PointMm topTubeAtSeat,
            double topTubeMm,
            double downTubeMm,
            double betweenHeadNodesMm,
            double topTubeSlopeDeg,
            double downTubeSlopeDeg,
            double topTubeToHeadTubeDeg,
            double downTubeToHeadTubeDeg,
            double topTubeToSeatTubeDeg,
            double downTubeToSeatTubeDeg,
            @Nullable Double standoverMm) {

        static Tubes of(TubeAxes axes, @Nullable Double standoverMm) {
            return new Tubes(
                    PointMm.of(axes.topTubeAtHead()),
                    PointMm.of(axes.downTubeAtHead()),
                    PointMm.of(axes.topTubeAtSeat()),
                    axes.topTube_mm(),
                    axes.downTube_mm(),
                    axes.betweenHeadNodes_mm(),
                    Math.toDegrees(axes.topTubeSlope_rad()),
                    Math.toDegrees(axes.downTubeSlope_rad()),
                    Math.toDegrees(axes.topTubeToHeadTube_rad()),
                    Math.toDegrees(axes.downTubeToHeadTube_rad()),
                    Math.toDegrees(axes.topTubeToSeatTube_rad()),
                    Math.toDegrees(axes.downTubeToSeatTube_rad()),
                    standoverMm);
        }
    }

    @Schema(description = "how much others change; by in the unit that the name of the figure says")
    record Moved(
            String figure,
            double by,
            double stackMm,
            double reachMm,
            double trailMm,
            double wheelbaseMm,
            double frontCentreMm) {

        static Moved of(Sensitivity moved) {
            return new Moved(
                    Dimensions.name(moved.changed()),
                    shown(moved.changed(), moved.step()),
                    moved.stack_mm(),
                    moved.reach_mm(),
                    moved.trail_mm(),
                    moved.wheelbase_mm(),
                    moved.frontCentre_mm());
        }
    }

    record Substituted(
            @Schema(description = "nose up; head and seat angle lessen by it")
            double pitchDeg,

            double shellRiseMm,
            Frame frame) {

        static Substituted of(Substitution substitution) {
            return new Substituted(
                    Math.toDegrees(substitution.pitch_rad()),
                    substitution.shellRise_mm(),
                    Frame.of(substitution.after()));
        }
    }

    private static double shown(Dimension dimension, double value) {
        return dimension.isAngle() ? Math.toDegrees(value) : value;
    }
}
