package org.trammel.calc.drawing;

import java.util.ArrayList;
import java.util.List;
import org.trammel.calc.drawing.Mark.Anchor;
import org.trammel.calc.drawing.Mark.Fill;
import org.trammel.calc.drawing.Mark.Hand;
import org.trammel.calc.drawing.Stretch.Kind;
import org.trammel.calc.geometry.PaperShape.Spot;

/** What was drawn on a sheet so far, and what stands where, so that the next text finds a free place. */
final class Board {

    /** Capitals and figures, in parts of the size of the letters; below the line only a comma reaches. */
    private static final double CAPITALS = 0.73;

    private static final double BELOW = 0.16;

    private static final int CORNERS = 72;

    private final Lettering lettering;
    private final Box inside;
    private final List<Mark> marks = new ArrayList<>();
    private final List<Mark> over = new ArrayList<>();
    private final List<Stretch> lines = new ArrayList<>();
    private final List<Box> taken = new ArrayList<>();

    /**
     * An empty sheet.
     *
     * @param inside where the drawing and its dimensions may stand
     */
    Board(Lettering lettering, Box inside) {
        this.lettering = lettering;
        this.inside = inside;
    }

    Lettering lettering() {
        return lettering;
    }

    Box inside() {
        return inside;
    }

    List<Stretch> lines() {
        return lines;
    }

    List<Box> taken() {
        return taken;
    }

    /** All of it, texts last. */
    List<Mark> marks() {
        List<Mark> all = new ArrayList<>(marks);
        all.addAll(over);
        return all;
    }

    void line(At from, At to, Pen pen, Kind kind) {
        marks.add(new Mark.Path(List.of(from.spot(), to.spot()), false, pen, Fill.NONE));
        lines.add(new Stretch(from, to, kind));
    }

    void line(At from, At to, Pen pen) {
        line(from, to, pen, pen == Pen.OUTLINE || pen == Pen.EMPHASIS ? Kind.OUTLINE : Kind.THIN);
    }

    /** An area with an edge. */
    void area(List<At> corners, Pen pen, Fill fill) {
        marks.add(new Mark.Path(corners.stream().map(At::spot).toList(), true, pen, fill));
        edges(corners, true, pen == Pen.OUTLINE || pen == Pen.EMPHASIS ? Kind.OUTLINE : Kind.THIN);
    }

    /** A filled shape too small to be looked out for, such as an arrowhead. */
    void filled(List<At> corners) {
        marks.add(new Mark.Path(corners.stream().map(At::spot).toList(), true, null, Fill.INK));
    }

    void path(List<At> places, Pen pen, Kind kind) {
        marks.add(new Mark.Path(places.stream().map(At::spot).toList(), false, pen, Fill.NONE));
        edges(places, false, kind);
    }

    void ring(At centre, double radius, Pen pen, Fill fill) {
        marks.add(new Mark.Ring(centre.spot(), radius, pen, fill));
        List<At> round = new ArrayList<>();
        for (int i = 0; i < CORNERS / 6; i++) {
            round.add(centre.plus(At.towards(Math.PI * 12 * i / CORNERS), radius));
        }
        edges(round, true, pen == Pen.OUTLINE || pen == Pen.EMPHASIS ? Kind.OUTLINE : Kind.THIN);
    }

    private void edges(List<At> places, boolean closed, Kind kind) {
        for (int i = 0; i + (closed ? 0 : 1) < places.size(); i++) {
            lines.add(new Stretch(places.get(i), places.get((i + 1) % places.size()), kind));
        }
    }

    /** A text whose place is known; what comes later keeps clear of it. */
    void words(At at, String words, double size, Anchor anchor, Hand hand) {
        over.add(new Mark.Words(at.spot(), 0, words, size, anchor, hand));
        double width = lettering.width_mm(words, size, hand == Hand.BOLD);
        taken.add(box(at.plus(new At(1, 0), width * (0.5 - anchor.share())), new At(1, 0), width, size));
    }

    /** Room that nothing else may take. */
    void keepFree(Box room) {
        taken.add(room);
    }

    /** A text about the middle of its base line; lines that run through it are covered. */
    void figure(At middle, double turn_rad, String words, double size) {
        At along = At.towards(turn_rad);
        double width = lettering.width_mm(words, size, false);
        Box box = box(middle, along, width, size);
        if (lines.stream().anyMatch(line -> line.kind() != Kind.OUTLINE && box.meets(line))) {
            List<Spot> cover = box.wider(0.3).corners().stream().map(At::spot).toList();
            over.add(new Mark.Path(cover, true, null, Fill.PAPER));
        }
        At start = middle.plus(along, -width / 2);
        over.add(new Mark.Words(start.spot(), turn_rad, words, size, Anchor.START, Hand.FIGURE));
        taken.add(box);
    }

    /** The room of a text about the middle of its base line. */
    static Box box(At middle, At along, double width, double size) {
        double half = size * (CAPITALS + BELOW) / 2;
        return new Box(middle.plus(along.left(), size * (CAPITALS - BELOW) / 2), along, width / 2, half);
    }

    static double capitals(double size) {
        return size * CAPITALS;
    }

    static final double FORBIDDEN = 1e6;

    /** How badly a text stands there. */
    double cost(Box text) {
        Box padded = text.wider(0.5);
        double cost = text.wider(0.3).within(inside) ? 0 : FORBIDDEN;
        for (Box other : taken) {
            cost += padded.meets(other) ? FORBIDDEN : 0;
        }
        for (Stretch line : lines) {
            if (padded.meets(line)) {
                cost += switch (line.kind()) {
                    case OUTLINE -> 2500;
                    case DIMENSION -> 900;
                    case THIN -> 120;
                };
            }
        }
        return cost;
    }

    /** How badly a line of a dimension runs there; an extension line may cross more than the dimension line. */
    double cost(Stretch line, boolean extension) {
        double cost = inside(line.from()) && inside(line.to()) ? 0 : FORBIDDEN / 2;
        for (Box text : taken) {
            cost += text.wider(0.4).meets(line) ? FORBIDDEN / 4 : 0;
        }
        for (Stretch other : lines) {
            boolean crossed = line.crosses(other);
            if (crossed) {
                cost += switch (other.kind()) {
                    case OUTLINE -> extension ? 5 : 30;
                    case DIMENSION -> extension ? 25 : 45;
                    case THIN -> extension ? 2 : 6;
                };
            }
            if (!crossed && other.kind() != Kind.THIN && line.runsBeside(other, extension ? 0.9 : 5)) {
                cost += extension ? 120 : 700;
            }
        }
        return cost;
    }

    private boolean inside(At at) {
        At from = at.minus(inside.centre());
        return Math.abs(from.x()) <= inside.halfLength() && Math.abs(from.y()) <= inside.halfHeight();
    }
}
