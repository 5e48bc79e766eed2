package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.geometry.Dimension;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.shop.web.OnlyTheseNames;

/** What may be given of a frame and is told of one, by the same names: what comes out can be sent in again. */
@OnlyTheseNames
record Dimensions(
        @Schema(description = "steering axis against the ground") @Nullable
        BigDecimal headAngleDeg,

        @Schema(description = "seat tube's axis against the ground") @Nullable
        BigDecimal seatAngleDeg,

        @Schema(description = "top of the head tube ahead of the shell") @Nullable
        BigDecimal reachMm,

        @Schema(description = "length of the head tube") @Nullable
        BigDecimal headTubeMm,

        @Schema(description = "lower headset stack, between head tube and crown") @Nullable
        BigDecimal lowerStackMm,

        @Schema(description = "axle to crown along the steering axis") @Nullable
        BigDecimal forkLengthMm,

        @Schema(description = "axle ahead of the steering axis, at right angles to it") @Nullable
        BigDecimal forkOffsetMm,

        @Schema(description = "shell below the front axle; below 0 where it lies above") @Nullable
        BigDecimal shellDropMm,

        @Schema(description = "shell to rear axle, straight, in the middle plane") @Nullable
        BigDecimal chainstayMm,

        @Schema(description = "from the foot of its axis to its top") @Nullable
        BigDecimal seatTubeMm,

        @Schema(description = "seat tube's axis ahead of the shell, at right angles to the axis; 0 if left out")
        @Nullable
        BigDecimal seatTubeOffsetMm,

        @Schema(description = "with tyre") @Nullable BigDecimal frontWheelRadiusMm,
        @Schema(description = "with tyre") @Nullable BigDecimal rearWheelRadiusMm,

        @Schema(description = "top of the head tube above the shell") @Nullable
        BigDecimal stackMm,

        @Schema(description = "shell to front axle, straight") @Nullable
        BigDecimal frontCentreMm,

        @Schema(description = "shell to front axle along the ground") @Nullable
        BigDecimal frontCentreLevelMm,

        @Schema(description = "shell to rear axle along the ground") @Nullable
        BigDecimal rearCentreLevelMm,

        @Schema(description = "axle to axle along the ground") @Nullable
        BigDecimal wheelbaseMm,

        @Schema(description = "shell above the ground") @Nullable
        BigDecimal shellHeightMm,

        @Schema(description = "shell below the rear axle") @Nullable
        BigDecimal rearShellDropMm,

        @Schema(description = "top of the head tube level to the seat tube's axis") @Nullable
        BigDecimal effectiveTopTubeMm,

        @Schema(description = "front tyre's contact ahead to the steering axis, along the ground") @Nullable
        BigDecimal trailMm,

        @Schema(description = "the same at right angles to the steering axis") @Nullable
        BigDecimal mechanicalTrailMm,

        @Schema(description = "how far the front sinks for a turn by one radian") @Nullable
        BigDecimal flopMm,

        @Schema(description = "front axle to crown in a straight line") @Nullable
        BigDecimal forkStraightMm) {

    /** The name of a dimension here, with its unit. */
    static String name(Dimension dimension) {
        return dimension.input() + (dimension.isAngle() ? "Deg" : "Mm");
    }

    static Dimensions of(FrameGeometry frame) {
        return new Dimensions(
                figure(Dimension.HEAD_ANGLE, frame),
                figure(Dimension.SEAT_ANGLE, frame),
                figure(Dimension.REACH, frame),
                figure(Dimension.HEAD_TUBE, frame),
                figure(Dimension.LOWER_STACK, frame),
                figure(Dimension.FORK_LENGTH, frame),
                figure(Dimension.FORK_OFFSET, frame),
                figure(Dimension.SHELL_DROP, frame),
                figure(Dimension.CHAINSTAY, frame),
                figure(Dimension.SEAT_TUBE, frame),
                figure(Dimension.SEAT_TUBE_OFFSET, frame),
                figure(Dimension.FRONT_WHEEL_RADIUS, frame),
                figure(Dimension.REAR_WHEEL_RADIUS, frame),
                figure(Dimension.STACK, frame),
                figure(Dimension.FRONT_CENTRE, frame),
                figure(Dimension.FRONT_CENTRE_LEVEL, frame),
                figure(Dimension.REAR_CENTRE_LEVEL, frame),
                figure(Dimension.WHEELBASE, frame),
                figure(Dimension.SHELL_HEIGHT, frame),
                figure(Dimension.REAR_SHELL_DROP, frame),
                figure(Dimension.EFFECTIVE_TOP_TUBE, frame),
                figure(Dimension.TRAIL, frame),
                figure(Dimension.MECHANICAL_TRAIL, frame),
                figure(Dimension.FLOP, frame),
                figure(Dimension.FORK_STRAIGHT, frame));
    }

    private static BigDecimal figure(Dimension dimension, FrameGeometry frame) {
        double value = dimension.of(frame);
        return BigDecimal.valueOf(dimension.isAngle() ? Math.toDegrees(value) : value);
    }

    /** Those that are given, angles in radians. */
    Map<Dimension, Double> given() {
        Map<Dimension, Double> given = new EnumMap<>(Dimension.class);
        put(given, Dimension.HEAD_ANGLE, headAngleDeg);
        put(given, Dimension.SEAT_ANGLE, seatAngleDeg);
        put(given, Dimension.REACH, reachMm);
        put(given, Dimension.HEAD_TUBE, headTubeMm);
        put(given, Dimension.LOWER_STACK, lowerStackMm);
        put(given, Dimension.FORK_LENGTH, forkLengthMm);
        put(given, Dimension.FORK_OFFSET, forkOffsetMm);
        put(given, Dimension.SHELL_DROP, shellDropMm);
        put(given, Dimension.CHAINSTAY, chainstayMm);
        put(given, Dimension.SEAT_TUBE, seatTubeMm);
        put(given, Dimension.SEAT_TUBE_OFFSET, seatTubeOffsetMm);
        put(given, Dimension.FRONT_WHEEL_RADIUS, frontWheelRadiusMm);
        put(given, Dimension.REAR_WHEEL_RADIUS, rearWheelRadiusMm);
        put(given, Dimension.STACK, stackMm);
        put(given, Dimension.FRONT_CENTRE, frontCentreMm);
        put(given, Dimension.FRONT_CENTRE_LEVEL, frontCentreLevelMm);
        put(given, Dimension.REAR_CENTRE_LEVEL, rearCentreLevelMm);
        put(given, Dimension.WHEELBASE, wheelbaseMm);
        put(given, Dimension.SHELL_HEIGHT, shellHeightMm);
        put(given, Dimension.REAR_SHELL_DROP, rearShellDropMm);
        put(given, Dimension.EFFECTIVE_TOP_TUBE, effectiveTopTubeMm);
        put(given, Dimension.TRAIL, trailMm);
        put(given, Dimension.MECHANICAL_TRAIL, mechanicalTrailMm);
        put(given, Dimension.FLOP, flopMm);
        put(given, Dimension.FORK_STRAIGHT, forkStraightMm);
        return given;
    }

    private static void put(Map<Dimension, Double> given, Dimension dimension, @Nullable BigDecimal figure) {
        if (figure != null) {
            double value = figure.doubleValue();
            given.put(dimension, dimension.isAngle() ? Math.toRadians(value) : value);
        }
    }
}
