package org.trammel.shop.web;

import java.util.List;

/**
 * A control chart as it is drawn: its figures stand in a table beside it.
 *
 * @param finding the sentence the drawing is read out as
 * @param panels one below the other, over the same readings; at least one
 * @param before how many readings stand before the first that is drawn
 * @param readings how many are drawn
 * @param inBase how many, from the very first, the limits were made of
 * @param newest what the last reading is called
 */
public record ChartView(String finding, List<Panel> panels, int before, int readings, int inBase, String newest) {

    public ChartView {
        panels = List.copyOf(panels);
        if (panels.isEmpty() || readings < 1) {
            throw new IllegalArgumentException("There is nothing to draw");
        }
    }

    /**
     * Traces about one centre.
     *
     * @param name what is plotted
     * @param decimals of its figures
     */
    public record Panel(String name, double centre, int decimals, List<Trace> traces) {

        public Panel {
            traces = List.copyOf(traces);
        }
    }

    /** A line through points. */
    public record Trace(List<Point> points) {

        public Trace {
            points = List.copyOf(points);
        }
    }

    /**
     * A point.
     *
     * @param index place of its reading among all, from 0
     * @param lower limit there; one that is the centre is none
     * @param alarm whether it is out of what stands still
     */
    public record Point(int index, double value, double lower, double upper, boolean alarm) {}
}
