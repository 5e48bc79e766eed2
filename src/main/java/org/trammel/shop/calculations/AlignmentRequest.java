package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.metrology.ErrorKind;
import org.trammel.shop.web.OnlyTheseNames;

/** Raw readings of a frame on a surface plate, or points of it in space. Lengths in mm, angles in degrees. */
@OnlyTheseNames
record AlignmentRequest(
        @Schema(description = "heights over a plate; left out where points are given") @Nullable
        Plate plate,

        @Schema(description = "points of an arm or probe; left out where heights are given") @Nullable
        Space points,

        @Schema(description = "causes of doubt of every reading that names none of its own; 10 at most") @Nullable
        List<Cause> causes,

        @Schema(description = "so far a point may lie off the plane of a clean face of the shell; 0.03 if left out")
        @Nullable
        BigDecimal cleanWithinMm) {

    static final int MOST = 200;
    static final int MOST_CAUSES = 10;

    @OnlyTheseNames
    record Cause(
            ErrorKind kind,

            @Schema(description = "standard uncertainty, mm")
            BigDecimal uMm,

            @Schema(description = "name of the cause where readings have it together, such as the gauge's number")
            @Nullable
            String sharedAs) {}

    @OnlyTheseNames
    record Plate(
            @Schema(description = "true if the drive side lies up, which is taken if left out") @Nullable
            Boolean driveSideUp,

            @Schema(description = "the shell's middle on its post; left out where its faces are read") @Nullable
            Post post,

            @Schema(description = "three points or more of each face; left out where the shell stands on its post")
            @Nullable
            List<Reading> driveFace,

            @Nullable List<Reading> nonDriveFace,

            @Schema(description = "from the lower to the upper end") @Nullable
            List<Reading> headTube,

            @Schema(description = "from the lower to the upper end") @Nullable
            List<Reading> seatTube,

            @Nullable Axle axle,
            @Nullable Stays stays,
            @Nullable Gaps gaps) {}

    @OnlyTheseNames
    record Post(
            BigDecimal heightMm,

            @Schema(description = "standard uncertainty of how truly the shell sits, 0 if left out") @Nullable
            BigDecimal tiltUDeg,

            @Nullable List<Cause> causes) {}

    /** A height at a place of the side view. */
    @OnlyTheseNames
    record Reading(
            @Schema(description = "ahead of the shell's axis")
            BigDecimal xMm,

            @Schema(description = "above it") BigDecimal yMm,

            @Schema(description = "above the plate; of the upper side where a diameter or an under side is given")
            BigDecimal heightMm,

            @Schema(description = "of the under side") @Nullable
            BigDecimal underMm,

            @Schema(description = "of tube or mandrel") @Nullable
            BigDecimal diameterMm,

            @Nullable List<Cause> causes) {}

    @OnlyTheseNames
    record Axle(
            BigDecimal xMm,
            BigDecimal yMm,
            List<BigDecimal> driveFaceMm,
            List<BigDecimal> nonDriveFaceMm,

            @Schema(description = "calliper between the faces; left out if the heights tell the width") @Nullable
            List<BigDecimal> insideWidthsMm,

            @Nullable List<Cause> causes) {}

    @OnlyTheseNames
    record Stays(
            BigDecimal driveMm,
            BigDecimal nonDriveMm,
            @Nullable List<Cause> causes) {}

    @OnlyTheseNames
    record Gaps(
            BigDecimal foreMm,
            BigDecimal aftMm,
            BigDecimal upMm,
            BigDecimal downMm,
            BigDecimal spanMm,
            @Nullable List<Cause> causes) {}

    @OnlyTheseNames
    record Space(
            List<Spot> driveFace,
            List<Spot> nonDriveFace,
            @Nullable List<Spot> shellBore,
            @Nullable List<Spot> headTube,
            @Nullable List<Spot> seatTube,
            @Nullable List<Spot> driveDropout,
            @Nullable List<Spot> nonDriveDropout,
            @Nullable Spot driveAxleEnd,
            @Nullable Spot nonDriveAxleEnd,
            @Nullable Spot headTubeTop,

            @Schema(description = "place of the rear axle on the drawing, ahead of the shell: below 0") @Nullable
            BigDecimal drawnAxleXMm,

            @Nullable BigDecimal drawnAxleYMm) {}

    @OnlyTheseNames
    record Spot(
            BigDecimal xMm,
            BigDecimal yMm,
            BigDecimal zMm,
            @Nullable List<Cause> causes) {}
}
