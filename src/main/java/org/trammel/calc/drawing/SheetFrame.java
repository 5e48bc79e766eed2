package org.trammel.calc.drawing;

import java.util.List;
import org.trammel.calc.drawing.Mark.Anchor;
import org.trammel.calc.drawing.Mark.Fill;
import org.trammel.calc.drawing.Mark.Hand;
import org.trammel.calc.geometry.Paper;

/**
 * A sheet lying across with its frame (ISO 5457), its title block (ISO 7200) and what holds for all of it: projection and
 * units.
 */
final class SheetFrame {

    private static final double BINDING_MM = 20;
    private static final double EDGE_MM = 10;
    private static final double ROW_MM = 8;
    private static final double BLOCK_MM = 180;
    private static final double CAPTION_MM = 2.5;
    private static final double SAID_MM = 3.3;
    private static final double LEAST_MM = 2.5;
    private static final double REMARK_MM = 2.7;
    private static final double REMARK_ROW_MM = 4;
    private static final double REMARKS_MM = 64;

    private final double width;
    private final double height;
    private final TitleBlock block;
    private final Board board;
    private double remarksTop;

    SheetFrame(Paper paper, TitleBlock block, Lettering lettering) {
        this.width = paper.height_mm();
        this.height = paper.width_mm();
        this.block = block;
        this.board = new Board(
                lettering,
                Box.between(BINDING_MM + 1, EDGE_MM + 3 * ROW_MM + 1, width - EDGE_MM - 1, height - EDGE_MM - 1));
    }

    Board board() {
        return board;
    }

    double left() {
        return BINDING_MM;
    }

    double right() {
        return width - EDGE_MM;
    }

    double bottom() {
        return EDGE_MM + 3 * ROW_MM;
    }

    double top() {
        return height - EDGE_MM;
    }

    /** Frame and title block, with what the sheet shows in a few words at its upper left. */
    void draw(String shows, int scale, int number, int of) {
        box(left(), EDGE_MM, right(), top(), Pen.OUTLINE);
        double x = right() - BLOCK_MM;
        board.line(new At(left(), bottom()), new At(right(), bottom()), Pen.OUTLINE);
        board.line(new At(x, EDGE_MM), new At(x, bottom()), Pen.OUTLINE);
        for (int row = 1; row < 3; row++) {
            board.line(new At(x, EDGE_MM + row * ROW_MM), new At(right(), EDGE_MM + row * ROW_MM), Pen.NARROW);
        }
        cells(
                x,
                2,
                List.of(
                        new Cell(50, "Owner", block.owner()),
                        new Cell(70, "Title", block.title()),
                        new Cell(36, "Identification", block.number()),
                        new Cell(24, "Revision", block.letter())));
        cells(
                x,
                1,
                List.of(
                        new Cell(50, "Metal", block.metal()),
                        new Cell(46, "State", block.state()),
                        new Cell(24, "Units", "mm, °"),
                        new Cell(36, "Scale", scale == 0 ? "none" : "1 : " + scale),
                        new Cell(24, "Sheet", number + " of " + of)));
        cells(
                x,
                0,
                List.of(
                        new Cell(46, "Drawn by", block.drawn()),
                        new Cell(68, "Design gate signed by", block.checked()),
                        new Cell(66, "Approved by the customer", block.approved())));
        projection(left() + 4, EDGE_MM + 2.2 * ROW_MM);
        double y = stamp();
        board.words(new At(left() + 4, y), shows, 3.5, Anchor.START, Hand.BOLD);
        remarksTop = y - REMARK_ROW_MM - 1;
    }

    /** Sentences in a block of their own, each from a new line; what is drawn already is kept clear of. */
    void remarks(List<String> sentences) {
        List<String> lines = sentences.stream()
                .flatMap(sentence -> board.lettering().lines(sentence, REMARK_MM, REMARKS_MM).stream())
                .toList();
        if (lines.isEmpty()) {
            return;
        }
        double wide = lines.stream()
                .mapToDouble(line -> board.lettering().width_mm(line, REMARK_MM, false))
                .max()
                .orElse(0);
        double high = REMARK_ROW_MM * (lines.size() - 1);
        At best = new At(left() + 4, remarksTop);
        double least = Double.POSITIVE_INFINITY;
        for (double down = 0; remarksTop - down - high > bottom() + 3; down += REMARK_ROW_MM) {
            for (double along = 0; left() + 4 + along + wide < right() - 3; along += REMARK_ROW_MM) {
                double away = (down + along) / 10;
                if (away >= least) {
                    break;
                }
                At at = new At(left() + 4 + along, remarksTop - down);
                double cost = away
                        + board.cost(Box.between(at.x() - 1, at.y() - high - 1, at.x() + wide + 1, at.y() + REMARK_MM));
                if (cost < least) {
                    least = cost;
                    best = at;
                }
            }
        }
        for (int i = 0; i < lines.size(); i++) {
            At at = new At(best.x(), best.y() - i * REMARK_ROW_MM);
            board.words(at, lines.get(i), REMARK_MM, Anchor.START, Hand.PLAIN);
        }
    }

    private void box(double left, double bottom, double right, double top, Pen pen) {
        board.area(
                List.of(new At(left, bottom), new At(right, bottom), new At(right, top), new At(left, top)),
                pen,
                Fill.NONE);
    }

    /** Says across a corner that nobody may work by this sheet; gives the height of the row below. */
    private double stamp() {
        double y = top() - 8;
        if (block.notForWork().isEmpty()) {
            return y;
        }
        double wide = board.lettering().width_mm(block.notForWork(), 4.5, true);
        board.words(new At(left() + 7, y - 1), block.notForWork(), 4.5, Anchor.START, Hand.BOLD);
        box(left() + 4, y - 3.5, left() + 10 + wide, y + 4.5, Pen.OUTLINE);
        board.keepFree(Box.between(left() + 4, y - 3.5, left() + 10 + wide, y + 4.5));
        return y - 10;
    }

    private record Cell(double width, String label, String said) {}

    private void cells(double left, int row, List<Cell> cells) {
        double x = left;
        double y = EDGE_MM + row * ROW_MM;
        for (Cell cell : cells) {
            if (x > left) {
                board.line(new At(x, y), new At(x, y + ROW_MM), Pen.NARROW);
            }
            board.words(new At(x + 1.6, y + 5.1), cell.label(), CAPTION_MM, Anchor.START, Hand.CAPTION);
            fitted(new At(x + 1.6, y + 1.4), cell.said(), cell.width() - 3.2, Anchor.START, Hand.BOLD);
            x += cell.width();
        }
    }

    /** A text made smaller until it fits, and cut only if it is too long even so. */
    void fitted(At at, String words, double room, Anchor anchor, Hand hand) {
        String said = words;
        double size = SAID_MM;
        boolean bold = hand == Hand.BOLD;
        double wide = board.lettering().width_mm(said, 1, bold);
        if (wide * size > room) {
            size = Math.max(LEAST_MM, room / wide);
        }
        while (said.length() > 1 && board.lettering().width_mm(said, size, bold) > room) {
            said = said.substring(0, said.length() - 2).stripTrailing() + "…";
        }
        if (!said.isEmpty()) {
            board.words(at, said, size, anchor, hand);
        }
    }

    /** The symbol of third angle projection, and what holds for the sheet. */
    private void projection(double x, double y) {
        At eye = new At(x + 4, y);
        board.ring(eye, 3.4, Pen.NARROW, Fill.NONE);
        board.ring(eye, 1.7, Pen.NARROW, Fill.NONE);
        double cone = x + 10.5;
        board.area(
                List.of(
                        new At(cone, y - 1.7),
                        new At(cone + 6.8, y - 3.4),
                        new At(cone + 6.8, y + 3.4),
                        new At(cone, y + 1.7)),
                Pen.NARROW,
                Fill.NONE);
        board.line(new At(x - 1, y), new At(cone + 8.2, y), Pen.CENTRE);
        board.line(new At(x + 4, y - 4.4), new At(x + 4, y + 4.4), Pen.CENTRE);
        board.words(new At(x + 22, y - 1), "Third angle projection", 3, Anchor.START, Hand.PLAIN);
        board.words(new At(x, y - 9), "Lengths in mm, axis to axis; angles in °.", 2.7, Anchor.START, Hand.PLAIN);
        board.words(new At(x, y - 14), "Front to the right.", 2.7, Anchor.START, Hand.PLAIN);
    }

    DrawnSheet sheet(String finding, int scale) {
        return new DrawnSheet(finding, width, height, scale, board.marks());
    }
}
