package org.trammel.shop.designs;

import com.lowagie.text.pdf.PRTokeniser;
import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfContentParser;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The lines of a printed file, in millimetres of its sheets, found by another library than the one that wrote them: it
 * takes the file apart, and the operators of path and state are carried out here (ISO 32000-1, 8.4 and 8.5).
 */
final class PrintedLines {

    private static final double MM_PER_UNIT = 25.4 / 72;

    /** A stroked line: its points, its width, whether it is broken, and what of the sheet was left open when it was drawn. */
    record Stroke(List<double[]> points, double width_mm, boolean broken, Rectangle2D open) {

        boolean straight() {
            return points.size() == 2;
        }

        boolean level() {
            return straight() && Math.abs(points.get(0)[1] - points.get(1)[1]) < 1e-3;
        }

        boolean upright() {
            return straight() && Math.abs(points.get(0)[0] - points.get(1)[0]) < 1e-3;
        }

        double length_mm() {
            double[] from = points.get(0);
            double[] to = points.get(points.size() - 1);
            return Math.hypot(to[0] - from[0], to[1] - from[1]);
        }
    }

    /** A sheet. */
    record Page(double width_mm, double height_mm, List<Stroke> strokes, String words, List<Boolean> fontsInside) {}

    private static final class State implements Cloneable {
        private AffineTransform place = new AffineTransform();
        private double width = 1;
        private boolean broken;
        private Rectangle2D open = new Rectangle2D.Double(-1e6, -1e6, 2e6, 2e6);

        State copy() {
            State copy = new State();
            copy.place = new AffineTransform(place);
            copy.width = width;
            copy.broken = broken;
            copy.open = open;
            return copy;
        }
    }

    private final Deque<State> kept = new ArrayDeque<>();
    private final List<Stroke> strokes = new ArrayList<>();
    private State state = new State();
    private List<List<double[]>> path = new ArrayList<>();
    private boolean clips;

    private PrintedLines() {}

    static List<Page> of(byte[] file) {
        try (PdfReader reader = new PdfReader(file)) {
            PdfTextExtractor text = new PdfTextExtractor(reader);
            return IntStream.rangeClosed(1, reader.getNumberOfPages())
                    .mapToObj(number -> page(reader, text, number))
                    .toList();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static Page page(PdfReader reader, PdfTextExtractor text, int number) {
        try {
            PrintedLines lines = new PrintedLines();
            lines.read(reader.getPageContent(number));
            return new Page(
                    reader.getPageSize(number).getWidth() * MM_PER_UNIT,
                    reader.getPageSize(number).getHeight() * MM_PER_UNIT,
                    lines.strokes,
                    text.getTextFromPage(number).replaceAll("\\s+", " "),
                    fonts(reader.getPageN(number)));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static List<Boolean> fonts(PdfDictionary page) {
        PdfDictionary fonts = page.getAsDict(PdfName.RESOURCES).getAsDict(PdfName.FONT);
        List<Boolean> inside = new ArrayList<>();
        for (PdfName name : fonts.getKeys()) {
            PdfArray descendants = fonts.getAsDict(name).getAsArray(PdfName.DESCENDANTFONTS);
            PdfDictionary described = descendants.getAsDict(0).getAsDict(PdfName.FONTDESCRIPTOR);
            inside.add(described.get(PdfName.FONTFILE2) != null);
        }
        return inside;
    }

    private void read(byte[] content) throws IOException {
        PdfContentParser parser = new PdfContentParser(new PRTokeniser(content));
        List<PdfObject> operands = new ArrayList<>();
        while (!parser.parse(operands).isEmpty()) {
            carryOut(operands.get(operands.size() - 1).toString(), operands);
        }
    }

    private void carryOut(String operator, List<PdfObject> given) {
        switch (operator) {
            case "q" -> kept.push(state.copy());
            case "Q" -> state = kept.pop();
            case "cm" ->
                state.place.concatenate(new AffineTransform(
                        n(given, 0), n(given, 1), n(given, 2), n(given, 3), n(given, 4), n(given, 5)));
            case "w" -> state.width = n(given, 0) * state.place.getScaleX();
            case "d" -> state.broken = !((PdfArray) given.get(0)).isEmpty();
            case "m" -> path.add(new ArrayList<>(List.of(at(n(given, 0), n(given, 1)))));
            case "l" -> path.get(path.size() - 1).add(at(n(given, 0), n(given, 1)));
            case "h" -> {
                List<double[]> last = path.get(path.size() - 1);
                last.add(last.get(0));
            }
            case "re" -> rectangle(n(given, 0), n(given, 1), n(given, 2), n(given, 3));
            case "W", "W*" -> clips = true;
            case "S" -> stroke();
            case "n", "f", "f*" -> clear();
            case "c", "v", "y", "s", "B", "b", "B*", "b*", "Do", "gs" ->
                throw new AssertionError("nobody taught this reader " + operator);
            default -> {
                // letters and colours leave no line
            }
        }
    }

    private void rectangle(double x, double y, double width, double height) {
        path.add(new ArrayList<>(
                List.of(at(x, y), at(x + width, y), at(x + width, y + height), at(x, y + height), at(x, y))));
    }

    private void stroke() {
        for (List<double[]> one : path) {
            strokes.add(new Stroke(List.copyOf(one), state.width * MM_PER_UNIT, state.broken, state.open));
        }
        clear();
    }

    private void clear() {
        if (clips) {
            double[] low = path.get(0).get(0);
            double[] high = path.get(0).get(2);
            state.open = state.open.createIntersection(
                    new Rectangle2D.Double(low[0], low[1], high[0] - low[0], high[1] - low[1]));
            clips = false;
        }
        path = new ArrayList<>();
    }

    private double[] at(double x, double y) {
        double[] units = {x, y};
        state.place.transform(units, 0, units, 0, 1);
        return new double[] {units[0] * MM_PER_UNIT, units[1] * MM_PER_UNIT};
    }

    private static double n(List<PdfObject> given, int index) {
        return ((PdfNumber) given.get(index)).doubleValue();
    }
}
