package org.trammel.shop.designs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.trammel.calc.geometry.CutPiece;
import org.trammel.calc.geometry.EndCut;
import org.trammel.calc.geometry.PaperShape.Spot;

/**
 * One paper for a tube that is mitred at both ends: both cuts in phase about the line that joins them, as far apart as the
 * tube is long. Printed side out, the first end up; the second end's paper lies on it turned by half a turn.
 *
 * @param piece the tube
 * @param first paper of its first end
 * @param second paper of its second end
 * @param width_mm the tube's perimeter
 * @param height_mm of the strip, lip to lip
 * @param upper cut line of the first end, from the left edge to the right one
 * @param lower cut line of the second end, in one piece or, where the strip's edges part it, in two
 * @param along_mm length that is left on the line that joins both ends
 */
record TubeStrip(
        CutPiece piece,
        JointTemplate first,
        JointTemplate second,
        double width_mm,
        double height_mm,
        List<Spot> upper,
        List<List<Spot>> lower,
        double along_mm) {

    private static final double EDGE_MM = 1e-6;

    TubeStrip {
        upper = List.copyOf(upper);
        lower = List.copyOf(lower);
    }

    /** The strip of a tube; empty where an end of it is not mitred. */
    static Optional<TubeStrip> of(CutPiece piece) {
        List<JointTemplate> ends =
                JointTemplate.of(piece).stream().filter(one -> !one.nonDrive()).toList();
        return ends.size() == 2 ? Optional.of(of(piece, ends.get(0), ends.get(1))) : Optional.empty();
    }

    private static TubeStrip of(CutPiece piece, JointTemplate first, JointTemplate second) {
        double width = first.width_mm();
        double low = second.cut().least_mm();
        double top = piece.axisLength_mm() - low;
        List<Spot> upper = first.cutLine().stream()
                .map(spot -> new Spot(spot.x_mm(), top - setback_mm(first, spot)))
                .toList();
        List<Spot> turned = new ArrayList<>();
        for (Spot spot : second.cutLine()) {
            turned.add(
                    0,
                    new Spot(first.joining_mm() + second.joining_mm() - spot.x_mm(), setback_mm(second, spot) - low));
        }
        List<List<Spot>> lower = onStrip(turned, width);
        return new TubeStrip(
                piece,
                first,
                second,
                width,
                top - first.cut().least_mm(),
                upper,
                lower,
                at(List.of(upper), first.joining_mm()) - at(lower, first.joining_mm()));
    }

    private static double setback_mm(JointTemplate end, Spot spot) {
        return JointTemplate.BODY_MM + end.cut().most_mm() - spot.y_mm();
    }

    /** A line of one turn, from anywhere on, parted where the strip's edges are. */
    private static List<List<Spot>> onStrip(List<Spot> line, double width) {
        double from = line.get(0).x_mm();
        double shift = from - Math.floor(from / width + EDGE_MM) * width;
        List<Spot> before = new ArrayList<>();
        List<Spot> after = new ArrayList<>();
        for (Spot spot : line) {
            double x = spot.x_mm() - from + shift;
            if (x <= width + EDGE_MM) {
                before.add(new Spot(x, spot.y_mm()));
            } else {
                if (after.isEmpty()) {
                    Spot last = before.get(before.size() - 1);
                    double share = (width - last.x_mm()) / (x - last.x_mm());
                    double y = last.y_mm() + share * (spot.y_mm() - last.y_mm());
                    before.add(new Spot(width, y));
                    after.add(new Spot(0, y));
                }
                after.add(new Spot(x - width, spot.y_mm()));
            }
        }
        return after.isEmpty() ? List.of(before) : List.of(before, after);
    }

    private static double at(List<List<Spot>> lines, double x_mm) {
        for (List<Spot> line : lines) {
            for (int i = 1; i < line.size(); i++) {
                Spot one = line.get(i - 1);
                Spot two = line.get(i);
                if (x_mm >= one.x_mm() - EDGE_MM && x_mm <= two.x_mm() + EDGE_MM && two.x_mm() > one.x_mm()) {
                    return one.y_mm() + (x_mm - one.x_mm()) / (two.x_mm() - one.x_mm()) * (two.y_mm() - one.y_mm());
                }
            }
        }
        throw new IllegalStateException("a line once round the tube has no place at " + x_mm);
    }

    /** What is cut by it, in words. */
    String ends() {
        return "upper end to the " + ((EndCut.Mitred) piece.endOne()).mate() + ", lower end to the "
                + ((EndCut.Mitred) piece.endTwo()).mate();
    }
}
