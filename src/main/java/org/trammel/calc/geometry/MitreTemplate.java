package org.trammel.calc.geometry;

import java.util.List;
import org.trammel.calc.units.Answer;

/**
 * A paper to wrap about a tube, printed side out and cut end up, along whose upper line the tube is cut.
 *
 * <pre>
 * x = s(φ)      y = body + most − z(φ)
 * </pre>
 *
 * s developed width, z setback, most the longest setback: the paper is cut deepest where the tube is. Both edges are the
 * line φ = 0 and meet on it. Accuracy: the points lie on the curve; between them, a degree apart, the polyline leaves it
 * by less than 0,005 mm on tubes up to 60 mm. Paper lies on the outside and its own thickness is not allowed for: a
 * sheet of 0,1 mm leaves a gap of 0,3 mm between its edges. Method: parallel-line development, common practice.
 *
 * @param width_mm the tube's perimeter
 * @param height_mm of the whole paper
 * @param depth_mm of the cut, lip to bottom
 * @param cutLine from the left edge to the right one
 * @param centreLines four: towards the mate's arm (the left edge), to its right, away from it, to its left
 * @param driveSide along the tube's drive side
 * @param joiningLine along the line that joins both ends of the tube
 */
public record MitreTemplate(
        double width_mm,
        double height_mm,
        double depth_mm,
        List<PaperShape.Spot> cutLine,
        List<PaperShape.Line> centreLines,
        PaperShape.Line driveSide,
        PaperShape.Line joiningLine) {

    private static final int STATIONS = 360;

    public MitreTemplate {
        cutLine = List.copyOf(cutLine);
        centreLines = List.copyOf(centreLines);
    }

    /**
     * Develops the outside of an end.
     *
     * @param end how it is cut
     * @param body_mm of paper below the bottom of the cut, by which it lies square on the tube
     */
    public static Answer<MitreTemplate> of(EndCut.Mitred end, double body_mm) {
        Joint joint = end.mitre().curve().joint();
        return checked(body_mm)
                .orElse(() -> MitreCurve.of(joint, STATIONS))
                .then(curve -> developed(end, curve, body_mm));
    }

    /** Develops the bore of an end: a paper to roll into the tube, as seen from outside. */
    public static Answer<MitreTemplate> ofBore(EndCut.Mitred end, double body_mm) {
        Joint joint = end.mitre().curve().joint();
        return checked(body_mm)
                .orElse(() -> MitreCurve.ofBore(joint, STATIONS))
                .then(curve -> developed(end, curve, body_mm));
    }

    private static Objections checked(double body_mm) {
        return new Objections().length("body", "paper below the cut", body_mm);
    }

    private static Answer<MitreTemplate> developed(EndCut.Mitred end, MitreCurve curve, double body_mm) {
        Ellipse outline = curve.joint().tube().outline();
        double height = body_mm + curve.depth_mm();
        List<PaperShape.Spot> cut = curve.stations().stream()
                .map(station ->
                        new PaperShape.Spot(station.developed_mm(), body_mm + curve.most_mm() - station.setback_mm()))
                .toList();
        List<PaperShape.Line> centres = List.of(0, 1, 2, 3).stream()
                .map(quarter -> upright(outline, quarter * Math.PI / 2, height))
                .toList();
        return Answer.of(new MitreTemplate(
                outline.perimeter_mm(),
                height,
                curve.depth_mm(),
                cut,
                centres,
                upright(outline, end.driveSideAt_rad(), height),
                upright(outline, end.lineAt_rad(), height)));
    }

    private static PaperShape.Line upright(Ellipse outline, double angle_rad, double height_mm) {
        double turn = 2 * Math.PI;
        double within = angle_rad - turn * Math.floor(angle_rad / turn);
        return PaperShape.Line.upright(outline.arc_mm(within), height_mm);
    }
}
