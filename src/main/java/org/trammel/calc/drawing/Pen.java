package org.trammel.calc.drawing;

import java.util.List;
import java.util.stream.DoubleStream;

/** How a line is drawn: two widths, 2 : 1, and what a broken one says. Source: ISO 128-2, from memory. */
public enum Pen {
    /** Edges that are seen, and the frame of the sheet. */
    OUTLINE(0.5),
    /** The part at hand, twice as wide as any other outline. */
    EMPHASIS(1.2),
    /** Dimensions, leaders, cells. */
    NARROW(0.25),
    /** Axes. */
    CENTRE(0.25, 6, 1.2, 0.6, 1.2),
    /** Hidden edges. */
    HIDDEN(0.25, 3, 1),
    /** Bought parts beside the frame: fork, shock, tyre. */
    ADJACENT(0.25, 6, 1.2, 0.6, 1.2, 0.6, 1.2);

    private final double width_mm;
    private final List<Double> strokes_mm;

    Pen(double width_mm, double... strokes_mm) {
        this.width_mm = width_mm;
        this.strokes_mm = DoubleStream.of(strokes_mm).boxed().toList();
    }

    /** Of the line. */
    public double width_mm() {
        return width_mm;
    }

    /** Lengths of strokes and gaps in turn; none for a continuous line. */
    public List<Double> strokes_mm() {
        return strokes_mm;
    }
}
