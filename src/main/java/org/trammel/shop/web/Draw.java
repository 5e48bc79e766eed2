package org.trammel.shop.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.trammel.calc.drawing.DrawnSheet;
import org.trammel.calc.marks.PunchMark;
import org.trammel.calc.marks.ScribeMark;

/** Everything drawn on the server. Templates know it as {@code @draw} and write its answers with {@code th:utext}. */
@Component("draw")
public class Draw {

    private final Formats formats;
    private final ObjectProvider<ScribeMarks> marks;

    Draw(Formats formats, ObjectProvider<ScribeMarks> marks) {
        this.formats = formats;
        this.marks = marks;
    }

    /**
     * The scribe mark of a frame.
     *
     * @param code of the mark; null asks whoever gives the marks out
     * @return empty if the frame has none (no longer)
     */
    public String scribe(String serial, @Nullable String code) {
        String known = code;
        if (known == null || known.isEmpty()) {
            ScribeMarks given = marks.getIfAvailable();
            known = given == null ? null : given.codeOf(serial);
        }
        return known == null || known.isEmpty() ? "" : MarkDrawing.scribe(ScribeMark.ofCode(known));
    }

    /** The tolerance scale, 700 wide. */
    public String scale(ScaleView view) {
        return ScaleDrawing.tall(formats, view);
    }

    /** The tolerance scale for a row, 44 high, with the figures of its limits. */
    public String smallScale(ScaleView view) {
        return ScaleDrawing.small(formats, view);
    }

    /** The errors of a gauge over its range. */
    public String errors(ErrorsView view) {
        return ErrorsDrawing.of(formats, view);
    }

    /** Readings by what had a hand in them, each a dot. */
    public String dots(DotsView view) {
        return DotsDrawing.of(formats, view);
    }

    /** How often readings fall into each class, against what is allowed. */
    public String histogram(HistogramView view) {
        return HistogramDrawing.of(formats, view);
    }

    /** Shares with their intervals. */
    public String shares(SharesView view) {
        return SharesDrawing.of(formats, view);
    }

    /** A control chart. */
    public String chart(ChartView view) {
        return ChartDrawing.of(formats, view);
    }

    public String route(RouteView route) {
        return RouteDrawing.of(route);
    }

    /**
     * A sheet of a drawing.
     *
     * @param what said before its finding to those who hear it
     */
    public String sheet(String what, DrawnSheet sheet) {
        return SheetPicture.of("frame-sheet", what, sheet);
    }

    /** A curve between its axes; the table of its points stands beside it. */
    public String curve(CurveView view) {
        return CurveDrawing.of(formats, view);
    }

    /** The frame in small with the part at hand. */
    public String atHand(DrawnSheet sheet) {
        return SheetPicture.of("at-hand", "", sheet);
    }

    /** A frame on the alignment table, what was measured of it drawn larger. */
    public String table(TableView view) {
        return TableDrawing.of(formats, view);
    }

    /** What thermocouples recorded over a run. */
    public String log(LogChartView view) {
        return LogChartDrawing.of(formats, view);
    }

    /** The last values of one axis. */
    public String trend(TrendView view) {
        return TrendDrawing.of(formats, view);
    }

    /** The punch of a person: people come one after the other, and so do punches. */
    public String punch(long personId) {
        List<PunchMark> all = PunchMark.all();
        return MarkDrawing.punch(all.get((int) Math.floorMod(personId - 1, (long) all.size())));
    }

    /** The pattern of a metal, by its code. */
    public String swatch(String metal) {
        return MarkDrawing.swatch(metal);
    }

    /** Tally strokes, five at most; the figure stands beside them. */
    public String tally(int figure) {
        return MarkDrawing.tally(figure);
    }

    /** A characteristic's letter in its flag. */
    public String letter(String letter) {
        return MarkDrawing.letter(letter);
    }

    /** The arcs under the balloon of the painted plate. */
    public String steppedOff() {
        return MarkDrawing.steppedOff();
    }
}
