package org.trammel.shop.web;

import java.awt.Color;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;
import org.trammel.calc.geometry.PaperShape.Spot;

/**
 * A sheet of a {@link PdfFile}: x to the right and y up from its lower left corner, in millimetres. A unit of the file is
 * 1/72 inch of 25,4 mm (ISO 32000-1, 8.3.2.3).
 */
public final class PdfSheet implements AutoCloseable {

    private static final double UNITS_PER_MM = 72 / 25.4;

    private final List<PDFont> fonts;
    private final PDPageContentStream out;

    /** How a line is drawn: its width, and the lengths of strokes and gaps of a broken one. */
    public record Pen(double width_mm, float[] strokes_mm) {

        /** Outlines, and lines to cut along. */
        public static final Pen WIDE = new Pen(0.5, new float[0]);
        /** Dimensions and everything else. */
        public static final Pen NARROW = new Pen(0.18, new float[0]);
        /** Axes. */
        public static final Pen CHAIN = new Pen(0.18, new float[] {6, 1.2f, 0.6f, 1.2f});
        /** Hidden edges. */
        public static final Pen DASHED = new Pen(0.18, new float[] {2, 1});
    }

    /** Where a text stands about its point. */
    public enum Anchor {
        START(0),
        MIDDLE(0.5),
        END(1);

        private final double share;

        Anchor(double share) {
            this.share = share;
        }
    }

    PdfSheet(PDDocument document, List<PDFont> fonts, double width_mm, double height_mm) {
        this.fonts = fonts;
        PDPage page = new PDPage(new PDRectangle(units(width_mm), units(height_mm)));
        document.addPage(page);
        this.out = written(() -> new PDPageContentStream(document, page));
    }

    /** A straight line. */
    public PdfSheet line(double x1_mm, double y1_mm, double x2_mm, double y2_mm, Pen pen) {
        return path(List.of(new Spot(x1_mm, y1_mm), new Spot(x2_mm, y2_mm)), pen);
    }

    /** A line from point to point. */
    public PdfSheet path(List<Spot> spots, Pen pen) {
        return done(() -> {
            pen(pen);
            along(spots);
            out.stroke();
        });
    }

    /** An area without an outline. */
    public PdfSheet area(List<Spot> corners, Color colour) {
        return done(() -> {
            out.setNonStrokingColor(colour);
            along(corners);
            out.closePath();
            out.fill();
            out.setNonStrokingColor(Color.BLACK);
        });
    }

    /** The outline of a rectangle. */
    public PdfSheet box(double x_mm, double y_mm, double width_mm, double height_mm, Pen pen) {
        return done(() -> {
            pen(pen);
            out.addRect(units(x_mm), units(y_mm), units(width_mm), units(height_mm));
            out.stroke();
        });
    }

    /** From here on nothing is seen outside a rectangle, until {@link #whole}. */
    public PdfSheet within(double x_mm, double y_mm, double width_mm, double height_mm) {
        return done(() -> {
            out.saveGraphicsState();
            out.addRect(units(x_mm), units(y_mm), units(width_mm), units(height_mm));
            out.clip();
        });
    }

    /** Ends {@link #within}. */
    public PdfSheet whole() {
        return done(out::restoreGraphicsState);
    }

    public PdfSheet text(double x_mm, double y_mm, String words, double size_mm) {
        return text(x_mm, y_mm, words, size_mm, Anchor.START, false);
    }

    public PdfSheet text(double x_mm, double y_mm, String words, double size_mm, Anchor anchor, boolean bold) {
        return turned(x_mm, y_mm, 0, words, size_mm, anchor, bold, Color.BLACK);
    }

    /**
     * A text on a slant.
     *
     * @param turn_rad anticlockwise
     * @param size_mm of the letters' body
     */
    public PdfSheet turned(
            double x_mm,
            double y_mm,
            double turn_rad,
            String words,
            double size_mm,
            Anchor anchor,
            boolean bold,
            Color colour) {
        List<Letters.Run> runs = Letters.runs(words, bold ? fonts.get(1) : fonts.get(0), fonts.get(2));
        double back = Letters.width(runs) * size_mm * anchor.share;
        return done(() -> {
            out.beginText();
            out.setNonStrokingColor(colour);
            out.setTextMatrix(Matrix.concatenate(
                    Matrix.getTranslateInstance(
                            units(x_mm - back * Math.cos(turn_rad)), units(y_mm - back * Math.sin(turn_rad))),
                    Matrix.getRotateInstance(turn_rad, 0, 0)));
            for (Letters.Run run : runs) {
                out.setFont(run.font(), units(size_mm));
                out.showText(run.words());
            }
            out.endText();
            out.setNonStrokingColor(Color.BLACK);
        });
    }

    /** How wide a text of this size is. */
    public double width_mm(String words, double size_mm, boolean bold) {
        return Letters.width(Letters.runs(words, bold ? fonts.get(1) : fonts.get(0), fonts.get(2))) * size_mm;
    }

    private void along(List<Spot> spots) throws IOException {
        out.moveTo(units(spots.get(0).x_mm()), units(spots.get(0).y_mm()));
        for (Spot spot : spots.subList(1, spots.size())) {
            out.lineTo(units(spot.x_mm()), units(spot.y_mm()));
        }
    }

    private void pen(Pen pen) throws IOException {
        out.setLineWidth(units(pen.width_mm()));
        float[] strokes = new float[pen.strokes_mm().length];
        for (int i = 0; i < strokes.length; i++) {
            strokes[i] = units(pen.strokes_mm()[i]);
        }
        out.setLineDashPattern(strokes, 0);
    }

    private static float units(double length_mm) {
        return (float) (length_mm * UNITS_PER_MM);
    }

    /** The sheet is finished. */
    @Override
    public void close() {
        done(out::close);
    }

    private interface Stroke {
        void draw() throws IOException;
    }

    private interface Opening {
        PDPageContentStream open() throws IOException;
    }

    private PdfSheet done(Stroke stroke) {
        try {
            stroke.draw();
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static PDPageContentStream written(Opening opening) {
        try {
            return opening.open();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
