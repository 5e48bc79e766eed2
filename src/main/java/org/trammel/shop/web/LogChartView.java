package org.trammel.shop.web;

import java.util.List;

/**
 * What thermocouples recorded over a run, with the bands that were asked for and the soaks in them.
 *
 * @param from_ms begin of the drawing, since 1970
 * @param finding in words
 */
public record LogChartView(List<Line> lines, List<Band> bands, long from_ms, long until_ms, String finding) {

    public LogChartView {
        lines = List.copyOf(lines);
        bands = List.copyOf(bands);
    }

    /** How a line is drawn: whole, dashed, chain. */
    public enum Stroke {
        LOAD,
        CONTROL,
        OVER_TEMPERATURE
    }

    /** One thermocouple. */
    public record Line(String name, Stroke stroke, List<Dot> dots) {

        public Line {
            dots = List.copyOf(dots);
        }
    }

    /**
     * A point of a line.
     *
     * @param joined whether a line leads to it from the point before
     */
    public record Dot(long time_ms, double degC, boolean joined) {}

    /** A band of temperature that a step asks for, and the stretches of time that its soak was made of. */
    public record Band(String name, double least_degC, double most_degC, List<Soak> soaks) {

        public Band {
            soaks = List.copyOf(soaks);
        }
    }

    /** A stretch of time in band. */
    public record Soak(long from_ms, long until_ms) {}
}
