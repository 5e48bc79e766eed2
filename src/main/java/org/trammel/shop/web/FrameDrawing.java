package org.trammel.shop.web;

import java.util.List;
import java.util.stream.Collectors;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.Point;
import org.trammel.calc.geometry.SideView.Hub;
import org.trammel.calc.geometry.SideView.Member;

/**
 * A frame seen from its drive side, as a drawing sheet of A4: wide outlines, chain lines on the axes (ISO 128), a
 * dimension on each number the frame is set up by (ISO 129-1), one of the standard scales (ISO 5455) and a title block
 * with the fields of ISO 7200. Four units of the drawing are a millimetre of the paper.
 */
final class FrameDrawing {

    private static final double PER_MM = 4;
    private static final double WIDTH = 297 * PER_MM;
    private static final double HEIGHT = 210 * PER_MM;
    private static final double LEFT = 20 * PER_MM;
    private static final double EDGE = 10 * PER_MM;
    private static final double BLOCK_WIDTH = 180 * PER_MM;
    private static final double BLOCK_HEIGHT = 22 * PER_MM;

    private static final double OUTLINE = 2;
    private static final double THIN = 1;
    private static final double LETTERS = 14;

    private final FrameSheetView view;
    private final Formats formats;
    private final Svg svg;
    private final Paper paper;

    private FrameDrawing(Formats formats, FrameSheetView view) {
        this.view = view;
        this.formats = formats;
        this.paper = Paper.fitting(
                view.side().geometry(), LEFT, EDGE, WIDTH - LEFT - EDGE, HEIGHT - 2 * EDGE - BLOCK_HEIGHT);
        this.svg = Svg.labelled("frame-sheet", WIDTH, HEIGHT, finding());
    }

    static String sheet(Formats formats, FrameSheetView view) {
        return new FrameDrawing(formats, view).drawn();
    }

    private String finding() {
        FrameGeometry g = view.side().geometry();
        return "Drawing of " + view.number() + ", drive side: reach "
                + mm(g.layout().reach_mm()) + ", stack " + mm(g.stack_mm()) + ", wheelbase " + mm(g.wheelbase_mm())
                + ".";
    }

    private String drawn() {
        svg.path(box(LEFT, EDGE, WIDTH - LEFT - EDGE, HEIGHT - 2 * EDGE), "none", Svg.INK, OUTLINE);
        view.side().members().forEach(this::member);
        view.side().hubs().forEach(this::hub);
        new FrameDimensions(svg, paper, formats, view.side().geometry()).draw();
        frontAxle();
        titleBlock();
        return svg.done();
    }

    // ------------------------------------------------------------------------------------------ the frame

    private void member(Member member) {
        boolean lit = member.part() == view.lit();
        String outline = member.corners().stream().map(paper::place).collect(Collectors.joining("L", "M", "z"));
        svg.path(outline, lit ? Svg.BLUE : Svg.SHEET, lit ? Svg.BLUE : Svg.INK, OUTLINE);
        double over = 14;
        Point along = paper.direction(member.from(), member.to());
        svg.line(
                paper.x(member.from()) - along.x_mm() * over,
                paper.y(member.from()) - along.y_mm() * over,
                paper.x(member.to()) + along.x_mm() * over,
                paper.y(member.to()) + along.y_mm() * over,
                lit ? Svg.SHEET : Svg.INK_3,
                THIN,
                Svg.CHAIN);
    }

    private void hub(Hub hub) {
        boolean lit = hub.part() == view.lit();
        double x = paper.x(hub.centre());
        double y = paper.y(hub.centre());
        double radius = paper.length(hub.outside_mm()) / 2;
        svg.ring(x, y, radius, lit ? Svg.BLUE : Svg.SHEET, lit ? Svg.BLUE : Svg.INK, OUTLINE);
        svg.ring(x, y, paper.length(hub.bore_mm()) / 2, Svg.SHEET, Svg.INK, THIN);
        cross(x, y, radius + 10);
    }

    private void frontAxle() {
        Point axle = view.side().geometry().frontAxle();
        cross(paper.x(axle), paper.y(axle), 18);
        svg.ring(paper.x(axle), paper.y(axle), 5, "none", Svg.INK, THIN);
    }

    private void cross(double x, double y, double reach) {
        svg.line(x - reach, y, x + reach, y, Svg.INK_3, THIN, Svg.CHAIN);
        svg.line(x, y - reach, x, y + reach, Svg.INK_3, THIN, Svg.CHAIN);
    }

    // ------------------------------------------------------------------------------------------ the title block

    private void titleBlock() {
        double x = WIDTH - EDGE - BLOCK_WIDTH;
        double y = HEIGHT - EDGE - BLOCK_HEIGHT;
        double half = BLOCK_HEIGHT / 2;
        svg.path(box(x, y, BLOCK_WIDTH, BLOCK_HEIGHT), Svg.SHEET, Svg.INK, OUTLINE);
        svg.line(x, y + half, x + BLOCK_WIDTH, y + half, Svg.INK, THIN, null);
        cells(
                x,
                y,
                List.of(
                        new Cell(230, "Owner", view.owner()),
                        new Cell(290, "Title", view.title()),
                        new Cell(110, "Identification", view.number()),
                        new Cell(90, "Revision", view.letter())));
        cells(
                x,
                y + half,
                List.of(
                        new Cell(230, "Metal", view.metal()),
                        new Cell(130, "State", view.state()),
                        new Cell(160, "Drawn", view.drawnOn()),
                        new Cell(110, "Scale", "1:" + paper.scale()),
                        new Cell(90, "Sheet", "1/1")));
        svg.text(LEFT + 14, HEIGHT - EDGE - 34, "Lengths in mm, angles in degrees.", 13, "start", Svg.INK_2, false);
        svg.text(LEFT + 14, HEIGHT - EDGE - 14, "Axis to axis; no wheels, no fork.", 13, "start", Svg.INK_2, false);
        thirdAngle(x - 100, y + 8);
    }

    private record Cell(double width, String label, String said) {}

    private void cells(double left, double top, List<Cell> cells) {
        double x = left;
        for (Cell cell : cells) {
            if (x > left) {
                svg.line(x, top, x, top + BLOCK_HEIGHT / 2, Svg.INK, THIN, null);
            }
            svg.text(x + 8, top + 15, cell.label(), 12, "start", Svg.INK_3, false);
            svg.text(x + 8, top + 36, fitted(cell.said(), cell.width() - 16), 16, "start", Svg.INK, true);
            x += cell.width();
        }
    }

    private static String fitted(String said, double width) {
        int most = (int) (width / (16 * 0.62));
        return said.length() <= most ? said : said.substring(0, Math.max(1, most - 1)) + "…";
    }

    /** The symbol of third angle projection. */
    private void thirdAngle(double x, double y) {
        svg.ring(x + 20, y + 26, 14, "none", Svg.INK, THIN);
        svg.ring(x + 20, y + 26, 7, "none", Svg.INK, THIN);
        svg.path("M" + Svg.n(x + 52) + " " + Svg.n(y + 19) + "v14l28 7v-28z", "none", Svg.INK, THIN);
        svg.line(x, y + 26, x + 86, y + 26, Svg.INK_3, THIN, Svg.CHAIN);
    }

    private String mm(double length_mm) {
        return formats.with(length_mm, 1, "mm");
    }

    private static String box(double x, double y, double width, double height) {
        return "M" + Svg.n(x) + " " + Svg.n(y) + "h" + Svg.n(width) + "v" + Svg.n(height) + "h" + Svg.n(-width) + "z";
    }
}
