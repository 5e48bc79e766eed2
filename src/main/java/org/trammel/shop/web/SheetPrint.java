package org.trammel.shop.web;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.drawing.DrawnSheet;
import org.trammel.calc.drawing.Mark;
import org.trammel.calc.drawing.Mark.Fill;
import org.trammel.calc.drawing.Mark.Hand;
import org.trammel.calc.drawing.Pen;
import org.trammel.calc.geometry.PaperShape.Spot;

/** A drawn sheet carried over to a file, at its full size and all in black. */
public final class SheetPrint {

    /** A circle is printed as so many sides: of 100 mm across it is true to a tenth of a line's width. */
    private static final int SIDES = 120;

    private final PdfSheet out;

    private SheetPrint(PdfSheet out) {
        this.out = out;
    }

    /** Adds the sheet to a file. */
    public static void add(PdfFile file, DrawnSheet sheet) {
        try (PdfSheet out = file.sheet(sheet.width_mm(), sheet.height_mm())) {
            SheetPrint print = new SheetPrint(out);
            sheet.marks().forEach(print::mark);
        }
    }

    private void mark(Mark mark) {
        if (mark instanceof Mark.Path path) {
            List<Spot> spots = new ArrayList<>(path.spots());
            if (path.closed()) {
                spots.add(spots.get(0));
            }
            drawn(spots, path.fill(), path.pen());
        } else if (mark instanceof Mark.Ring ring) {
            List<Spot> round = new ArrayList<>();
            for (int i = 0; i <= SIDES; i++) {
                double turn = 2 * Math.PI * i / SIDES;
                round.add(new Spot(
                        ring.centre().x_mm() + ring.radius_mm() * Math.cos(turn),
                        ring.centre().y_mm() + ring.radius_mm() * Math.sin(turn)));
            }
            drawn(round, ring.fill(), ring.pen());
        } else if (mark instanceof Mark.Words words) {
            out.turned(
                    words.at().x_mm(),
                    words.at().y_mm(),
                    words.turn_rad(),
                    words.words(),
                    words.size_mm(),
                    PdfSheet.Anchor.valueOf(words.anchor().name()),
                    words.hand() == Hand.BOLD,
                    Color.BLACK);
        }
    }

    private void drawn(List<Spot> spots, Fill fill, @Nullable Pen pen) {
        if (fill != Fill.NONE) {
            out.area(spots, fill == Fill.PAPER ? Color.WHITE : Color.BLACK);
        }
        if (pen != null) {
            float[] strokes = new float[pen.strokes_mm().size()];
            for (int i = 0; i < strokes.length; i++) {
                strokes[i] = pen.strokes_mm().get(i).floatValue();
            }
            out.path(spots, new PdfSheet.Pen(pen.width_mm(), strokes));
        }
    }
}
