package org.trammel.shop.designs;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.drawing.DrawnSheet;
import org.trammel.calc.geometry.BentStay;
import org.trammel.calc.geometry.Caution;
import org.trammel.calc.geometry.CutList;
import org.trammel.calc.geometry.CutPiece;
import org.trammel.calc.geometry.EndCut;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.FrameTube;
import org.trammel.calc.geometry.Paper;
import org.trammel.calc.geometry.Point;
import org.trammel.calc.units.Answer;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.web.Formats;

/** Makes the sheet with the drawing, its figures and the cut list out of a revision's inputs. */
@Component
class FramePage {

    private static final String UNDONE = "No drawing was made.";

    private final DesignSheets sheets;
    private final Formats formats;
    private final SawDrawer saws;
    private final PieceNotes notes;
    private final MassSheet masses;
    private final SwingSheet swings;

    FramePage(
            DesignSheets sheets,
            Formats formats,
            SawDrawer saws,
            PieceNotes notes,
            MassSheet masses,
            SwingSheet swings) {
        this.sheets = sheets;
        this.formats = formats;
        this.saws = saws;
        this.notes = notes;
        this.masses = masses;
        this.swings = swings;
    }

    /**
     * What the sheet shows.
     *
     * @param drawings the views, each on its sheet; empty where the frame cannot be drawn
     * @param notAbove why the rear end is not drawn from above although the frame is drawn
     * @param figures what follows from the inputs; empty where nothing does
     * @param tubes the cut list; empty where it cannot be made
     * @param swing null for a frame without a swing arm
     * @param mass null where there is no cut list
     * @param fit the fit sheet beside it
     * @param gaps why something is missing, one sentence each
     */
    record Shown(
            List<DrawnSheet> drawings,
            List<String> notAbove,
            List<Figure> figures,
            List<Tube> tubes,
            SwingSheet.@Nullable Shown swing,
            List<MassSheet.Shown> masses,
            FitPage fit,
            List<String> gaps) {}

    /** A figure of the frame, in mm, degrees or percent; a ratio has no unit. */
    record Figure(String label, double amount, String unit, int decimals) {

        /** With one decimal. */
        Figure(String label, double amount, String unit) {
            this(label, amount, unit, 1);
        }
    }

    /**
     * A line of the cut list, angles in degrees, lengths in mm.
     *
     * @param trimmed_mm length after an end was formed; null if none is
     * @param phase_deg of the second cut against the first; null where one end is not mitred
     * @param notes how it is shortened, formed, bent and slotted
     */
    record Tube(
            String name,
            int count,
            String section,
            double axis_mm,
            double blank_mm,
            @Nullable Double trimmed_mm,
            End one,
            End two,
            @Nullable Double phase_deg,
            List<String> notes,
            List<String> cautions) {}

    /**
     * One end of a tube.
     *
     * @param what to which mate, or how it is cut otherwise
     * @param saw how it is set up
     * @param least_mm shortest setback from the mate's axis
     * @param most_mm longest
     */
    record End(String what, String saw, double least_mm, double most_mm, boolean mitred) {}

    Shown of(RevisionStory story, Paper paper) {
        DesignSheet sheet = story.sheet();
        ComputedFrame frame = computed(sheet);
        Answer<?> tandem = frame.tandem();
        List<String> gaps = tandem == null
                ? gaps(frame.geometry(), frame.axes(), frame.side(), frame.cuts())
                : gaps(frame.geometry(), tandem, frame.axes(), frame.side(), frame.rear(), frame.cuts());
        List<DrawnSheet> drawn = drawn(story, frame, paper);
        return new Shown(
                // what the last sheet says stands in the page's own tables
                drawn.stream().filter(one -> one.scale() > 0).toList(),
                drawn.isEmpty() ? List.of() : gaps(frame.rear()),
                figures(frame),
                tubes(frame),
                swings.of(sheet, frame),
                frame.cuts() instanceof Answer.Determined<CutList> ? masses.of(sheet, frame) : List.of(),
                FitPage.of(new GivenInputs(sheet.geometry()), frame).inWords(formats::sentence),
                frame.cuts() instanceof Answer.Determined<CutList> list
                        ? Stream.concat(
                                        gaps.stream(),
                                        list.value().notCut().stream()
                                                .map(Answer.Gap::words)
                                                .map(formats::sentence))
                                .toList()
                        : gaps);
    }

    private List<DrawnSheet> drawn(RevisionStory story, ComputedFrame frame, Paper paper) {
        return sheets.of(story, frame, figures(frame), tubes(frame), paper);
    }

    /** All sheets of the drawing as a file. */
    Templates.Made file(RevisionStory story, Paper paper) {
        DesignSheet sheet = story.sheet();
        ComputedFrame frame = computed(sheet);
        List<DrawnSheet> drawn = drawn(story, frame, paper);
        if (drawn.isEmpty()) {
            throw Refusal.state(
                    UNDONE,
                    gaps(frame.side()).stream().limit(3).collect(Collectors.joining(" ")),
                    "Complete the inputs of a draft; the drawing's page names all that is missing.");
        }
        return new Templates.Made(sheet.drawnFor() + "-" + sheet.letter() + "-drawing.pdf", sheets.file(sheet, drawn));
    }

    private List<String> gaps(Answer<?>... answers) {
        return Stream.of(answers)
                .flatMap(answer -> answer instanceof Answer.NotDeterminable<?> none
                        ? none.gaps().stream().map(Answer.Gap::words).map(formats::sentence)
                        : Stream.empty())
                .distinct()
                .toList();
    }

    /** What follows from the inputs by the settings of now, and its cuts as they were released. */
    ComputedFrame computed(DesignSheet sheet) {
        return ComputedFrame.of(sheet, saws.rules(sheet.revisionId()));
    }

    private static List<Figure> figures(ComputedFrame frame) {
        return frame.geometry() instanceof Answer.Determined<FrameGeometry> there
                ? figures(there.value(), frame)
                : List.of();
    }

    private List<Tube> tubes(ComputedFrame frame) {
        return frame.cuts() instanceof Answer.Determined<CutList> list ? tubes(list.value(), frame.paths()) : List.of();
    }

    private static List<Figure> figures(FrameGeometry frame, ComputedFrame computed) {
        List<Figure> figures = new ArrayList<>(List.of(
                new Figure("Stack", frame.stack_mm(), "mm"),
                new Figure("Reach", frame.layout().reach_mm(), "mm"),
                new Figure("Effective top tube", frame.effectiveTopTube_mm(), "mm")));
        if (computed.wheelbase_mm() instanceof Answer.Determined<Double> there) {
            figures.add(new Figure("Wheelbase", there.value(), "mm"));
        }
        figures.add(new Figure("Front centre", frame.frontCentre_mm(), "mm"));
        if (computed.rearAxle() instanceof Answer.Determined<Point> there) {
            figures.add(new Figure(
                    computed.isTandem() ? "Rear axle behind the front shell" : "Rear axle behind the shell",
                    -there.value().x_mm(),
                    "mm"));
        }
        figures.addAll(List.of(
                new Figure("Shell below the rear axle", frame.layout().rearDrop_mm(), "mm"),
                new Figure("Shell above the ground", frame.shellHeight_mm(), "mm"),
                new Figure("Trail", frame.trail_mm(), "mm"),
                new Figure("Flop of the wheel", frame.flop_mm(), "mm")));
        return figures;
    }

    private List<Tube> tubes(CutList list, Map<FrameTube, BentStay> paths) {
        return list.pieces().stream().map(piece -> tube(piece, paths)).toList();
    }

    private Tube tube(CutPiece piece, Map<FrameTube, BentStay> paths) {
        End one = end(piece.endOne());
        End two = end(piece.endTwo());
        CutPiece.Forming forming = piece.forming();
        List<String> cautions = new ArrayList<>();
        piece.cautions().stream().map(Caution::words).map(formats::sentence).forEach(cautions::add);
        return new Tube(
                piece.tube().word(),
                piece.tube().count(),
                notes.section(piece),
                piece.axisLength_mm(),
                piece.blank_mm(),
                forming == null ? null : forming.trimmed_mm(),
                one,
                two,
                one.mitred() && two.mitred() ? Math.toDegrees(piece.phase_rad()) : null,
                notes.of(piece, paths),
                cautions);
    }

    private End end(EndCut cut) {
        if (cut instanceof EndCut.Mitred mitred) {
            double angle = Math.toDegrees(mitred.mitre().fixture().includedAngle_rad());
            String saw = mitred.mitre().fixture().holeSaw_mm() instanceof Answer.Determined<Double> size
                    ? "saw " + formats.number(size.value(), 1) + ", " + formats.with(angle, 1, "°")
                    : "no saw, " + formats.with(angle, 1, "°");
            return new End("to the " + mitred.mate(), saw, cut.least_mm(), cut.most_mm(), true);
        }
        if (cut instanceof EndCut.AsDrawn drawn) {
            return new End(
                    "to the " + drawn.mate(),
                    formats.with(Math.toDegrees(drawn.angle_rad()), 1, "°"),
                    cut.least_mm(),
                    cut.most_mm(),
                    false);
        }
        return new End(cut instanceof EndCut.Slotted ? "slotted" : "square", "", cut.least_mm(), cut.most_mm(), false);
    }
}
