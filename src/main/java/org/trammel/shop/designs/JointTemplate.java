package org.trammel.shop.designs;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.trammel.calc.geometry.CutPiece;
import org.trammel.calc.geometry.EndCut;
import org.trammel.calc.geometry.FrameTube;
import org.trammel.calc.geometry.MitreCurve;
import org.trammel.calc.geometry.MitreTemplate;
import org.trammel.calc.geometry.PaperShape.Line;
import org.trammel.calc.geometry.PaperShape.Spot;
import org.trammel.calc.units.Answer;

/**
 * The paper for one mitred end of one tube. Of a pair of stays the one on the drive side is computed; the other is its
 * mirror image, and so is its paper.
 *
 * @param piece the tube
 * @param second whether it is the tube's second end
 * @param nonDrive whether it is the mirrored stay
 * @param cut how the end is cut
 * @param width_mm the tube's perimeter
 * @param height_mm of the paper
 * @param cutLine along the outside, from the left edge to the right one
 * @param boreLine where the same cut leaves the bore, drawn at the same places around the tube
 * @param marks the lines along the tube, each with its name
 * @param joining_mm from the left edge to the line that joins both ends
 */
record JointTemplate(
        CutPiece piece,
        boolean second,
        boolean nonDrive,
        EndCut.Mitred cut,
        double width_mm,
        double height_mm,
        List<Spot> cutLine,
        List<Spot> boreLine,
        List<Mark> marks,
        double joining_mm) {

    /** So much of the tube is wrapped below the cut, by which the paper lies square. */
    static final double BODY_MM = 52;

    /** A line along the tube. */
    record Mark(double at_mm, String name) {}

    JointTemplate {
        cutLine = List.copyOf(cutLine);
        boreLine = List.copyOf(boreLine);
        marks = List.copyOf(marks);
    }

    /** The papers of a tube: one for each mitred end, of a pair of stays one for each stay. */
    static List<JointTemplate> of(CutPiece piece) {
        List<JointTemplate> all = new ArrayList<>();
        for (boolean second : new boolean[] {false, true}) {
            if ((second ? piece.endTwo() : piece.endOne()) instanceof EndCut.Mitred cut) {
                of(piece, second, cut).ifPresent(one -> {
                    all.add(one);
                    if (piece.tube().count() > 1) {
                        all.add(one.mirrored());
                    }
                });
            }
        }
        return all;
    }

    private static Optional<JointTemplate> of(CutPiece piece, boolean second, EndCut.Mitred cut) {
        if (!(MitreTemplate.of(cut, BODY_MM) instanceof Answer.Determined<MitreTemplate> there)) {
            return Optional.empty();
        }
        MitreTemplate shape = there.value();
        return Optional.of(new JointTemplate(
                piece,
                second,
                false,
                cut,
                shape.width_mm(),
                shape.height_mm(),
                shape.cutLine(),
                boreLine(cut, shape),
                marks(piece.tube(), second, shape),
                shape.joiningLine().from().x_mm()));
    }

    private static List<Spot> boreLine(EndCut.Mitred cut, MitreTemplate shape) {
        int stations = shape.cutLine().size() - 1;
        if (!(MitreCurve.ofBore(cut.mitre().curve().joint(), stations) instanceof Answer.Determined<MitreCurve> bore)) {
            return List.of();
        }
        List<Spot> line = new ArrayList<>();
        for (int i = 0; i <= stations; i++) {
            line.add(new Spot(
                    shape.cutLine().get(i).x_mm(),
                    BODY_MM + cut.most_mm() - bore.value().stations().get(i).setback_mm()));
        }
        return line;
    }

    /** The four quarters, named by the side of the frame they lie on. */
    private static List<Mark> marks(FrameTube tube, boolean second, MitreTemplate shape) {
        String[] names = {"drive side", afterDriveSide(tube, second), "non-drive side", beforeDriveSide(tube, second)};
        double width = shape.width_mm();
        double drive = shape.driveSide().from().x_mm();
        List<Mark> marks = new ArrayList<>();
        for (Line line : shape.centreLines()) {
            double x = line.from().x_mm();
            double turns = (x - drive) / width;
            int quarters = (int) Math.round((turns - Math.floor(turns)) * 4) % 4;
            marks.add(new Mark(x, names[quarters]));
        }
        return marks;
    }

    /** Seen from outside with the cut end up, the side to the right of the drive side. */
    private static String afterDriveSide(FrameTube tube, boolean second) {
        return switch (tube) {
            case DOWN_TUBE, TOP_TUBE -> second ? "upper side" : "under side";
            case SEAT_TUBE -> "rear side";
            case CHAINSTAY, SEATSTAY -> "under side";
        };
    }

    private static String beforeDriveSide(FrameTube tube, boolean second) {
        return switch (afterDriveSide(tube, second)) {
            case "upper side" -> "under side";
            case "rear side" -> "front side";
            default -> "upper side";
        };
    }

    private JointTemplate mirrored() {
        List<Mark> turned = marks.stream()
                .map(mark -> new Mark(
                        across(mark.at_mm()),
                        switch (mark.name()) {
                            case "drive side" -> "non-drive side";
                            case "non-drive side" -> "drive side";
                            default -> mark.name();
                        }))
                .toList();
        return new JointTemplate(
                piece,
                second,
                true,
                cut,
                width_mm,
                height_mm,
                turned(cutLine),
                turned(boreLine),
                turned,
                across(joining_mm));
    }

    /** The edges are one line of the tube: a mark on the left one stays there. */
    private double across(double x_mm) {
        return x_mm < EDGE_MM ? x_mm : width_mm - x_mm;
    }

    private static final double EDGE_MM = 1e-6;

    private List<Spot> turned(List<Spot> line) {
        List<Spot> turned = new ArrayList<>(line.stream()
                .map(spot -> new Spot(width_mm - spot.x_mm(), spot.y_mm()))
                .toList());
        Collections.reverse(turned);
        return turned;
    }

    /** Which tube it is wrapped about. */
    String tube() {
        return capital(piece.tube().word())
                + (piece.tube().count() == 1 ? "" : nonDrive ? " of the non-drive side" : " of the drive side");
    }

    /** Which end of it is cut by it. */
    String end() {
        return (second ? "second" : "first") + " end, to the " + cut.mate();
    }

    private static String capital(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }
}
