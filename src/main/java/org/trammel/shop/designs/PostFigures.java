package org.trammel.shop.designs;

import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.geometry.Clearances;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.units.Answer;

/**
 * A seatpost in its seat tube against the post's mark, against the top tube's node and, where it is given, against what
 * stops a post. The saddle's clamp stands where it was typed and where the fit sheet puts it: the rider sits by the one,
 * the drawing shows the other, so where both are there both are judged.
 */
final class PostFigures {

    private final GivenInputs in;
    private final ComputedFrame frame;

    PostFigures(GivenInputs in, ComputedFrame frame) {
        this.in = in;
        this.frame = frame;
    }

    List<Answer<List<CheckFigure>>> all() {
        List<Answer<List<CheckFigure>>> figures = new ArrayList<>();
        boolean byFit = in.has(GeometryInput.SADDLE_HEIGHT);
        if (in.has(GeometryInput.SADDLE_CLAMP) || !byFit) {
            figures.add(frame.geometry()
                    .then(geometry -> in.all(GeometryInput.SADDLE_CLAMP)
                            .then(there -> figures(geometry, in.number(GeometryInput.SADDLE_CLAMP), "inserted"))));
        }
        if (byFit) {
            figures.add(frame.geometry()
                    .then(geometry -> new FitInputs(in)
                            .saddle(geometry)
                            .then(fit -> figures(geometry, fit.clamp_mm(), "inserted by the fit sheet"))));
        }
        // what is missing beside the clamp is missing whatever tells the clamp
        figures.add(frame.geometry().then(geometry -> post().then(there -> Answer.of(List.of()))));
        return figures;
    }

    private Answer<GivenInputs> post() {
        return in.all(GeometryInput.SEATPOST, GeometryInput.SEATPOST_MARK, GeometryInput.TOP_TUBE_AT_SEAT);
    }

    private Answer<List<CheckFigure>> figures(FrameGeometry geometry, double clamp_mm, String inserted) {
        return post().then(there -> Clearances.seatpost(
                        geometry,
                        in.number(GeometryInput.SEATPOST),
                        in.number(GeometryInput.SEATPOST_MARK),
                        clamp_mm,
                        in.number(GeometryInput.TOP_TUBE_AT_SEAT),
                        in.number(GeometryInput.SEATPOST_DEPTH, Double.MAX_VALUE)))
                .then(room -> Answer.of(figures(room.mark().value_mm(), inserted)));
    }

    private List<CheckFigure> figures(double inside_mm, String inserted) {
        List<CheckFigure> made = new ArrayList<>(List.of(
                CheckFigure.atLeast(inserted + ", to the mark", inside_mm, in.number(GeometryInput.SEATPOST_MARK))
                        .from(drawn(GeometryInput.SEATPOST_MARK)),
                CheckFigure.atLeast(
                                inserted + ", to the top tube", inside_mm, in.number(GeometryInput.TOP_TUBE_AT_SEAT))
                        .from(drawn(GeometryInput.TOP_TUBE_AT_SEAT))));
        if (in.has(GeometryInput.SEATPOST_DEPTH)) {
            made.add(CheckFigure.atMost(
                            inserted + ", in the free depth", inside_mm, in.number(GeometryInput.SEATPOST_DEPTH), "mm")
                    .from(drawn(GeometryInput.SEATPOST_DEPTH)));
        }
        return made;
    }

    /** Their limits are no settings of the shop: they belong to this very post and frame. */
    private static String drawn(GeometryInput input) {
        return "input of this drawing: " + Character.toLowerCase(input.label().charAt(0))
                + input.label().substring(1);
    }
}
