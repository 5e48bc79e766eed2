package org.trammel.shop.web;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The record of an oven run: temperature over time, a line for each thermocouple, the band of each step between two dashed
 * lines, its soak shaded. Roles are told apart by the kind of line and by their name at its end.
 */
final class LogChartDrawing {

    private static final double WIDTH = 900;
    private static final double HEIGHT = 380;
    private static final double LEFT = 56;
    private static final double RIGHT = 748;
    private static final double TOP = 16;
    private static final double BOTTOM = 340;
    private static final double APART = 15;
    private static final int[] STEPS_MIN = {5, 10, 15, 30, 60, 120, 180, 240, 360, 720, 1440, 2880, 10080};

    private final Formats formats;
    private final LogChartView view;
    private final Svg svg;
    private final double least;
    private final double most;

    private LogChartDrawing(Formats formats, LogChartView view) {
        this.formats = formats;
        this.view = view;
        svg = Svg.labelled("log-chart", WIDTH, HEIGHT, view.finding());
        double[] all = DoubleStream.concat(
                        view.lines().stream()
                                .flatMap(line -> line.dots().stream())
                                .mapToDouble(LogChartView.Dot::degC),
                        view.bands().stream()
                                .flatMapToDouble(band -> DoubleStream.of(band.least_degC(), band.most_degC())))
                .sorted()
                .toArray();
        double low = all.length == 0 ? 0 : all[0];
        double high = all.length == 0 ? 100 : all[all.length - 1];
        least = Math.floor(low / 20) * 20;
        most = Math.max(least + 20, Math.ceil((high + 2) / 20) * 20);
    }

    static String of(Formats formats, LogChartView view) {
        LogChartDrawing drawing = new LogChartDrawing(formats, view);
        drawing.bands();
        drawing.axes();
        drawing.lines();
        return drawing.svg.done();
    }

    private void bands() {
        for (LogChartView.Band band : view.bands()) {
            double upper = y(band.most_degC());
            double lower = y(band.least_degC());
            for (LogChartView.Soak soak : band.soaks()) {
                svg.rect(
                        x(soak.from_ms()),
                        upper,
                        x(soak.until_ms()) - x(soak.from_ms()),
                        lower - upper,
                        "var(--blue-wash)");
            }
            svg.line(LEFT, upper, RIGHT, upper, Svg.INK_2, 1, Svg.DASHED);
            svg.line(LEFT, lower, RIGHT, lower, Svg.INK_2, 1, Svg.DASHED);
        }
    }

    private void axes() {
        svg.line(LEFT, TOP, LEFT, BOTTOM, Svg.INK, 1, null);
        svg.line(LEFT, BOTTOM, RIGHT, BOTTOM, Svg.INK, 1, null);
        double step = most - least > 300 ? 100 : most - least > 120 ? 40 : 20;
        for (double degC = least; degC <= most + 1e-9; degC += step) {
            svg.line(LEFT - 5, y(degC), LEFT, y(degC), Svg.INK, 1, null);
            svg.text(LEFT - 9, y(degC) + 4, formats.number(degC, 0), 12, "end", Svg.INK_2, false);
        }
        svg.text(LEFT - 9, TOP - 3, "°C", 12, "end", Svg.INK_2, false);
        long span_min = Math.max(1, (view.until_ms() - view.from_ms()) / 60_000);
        int every = STEPS_MIN[STEPS_MIN.length - 1];
        for (int i = STEPS_MIN.length - 1; i >= 0; i--) {
            every = span_min / STEPS_MIN[i] <= 9 ? STEPS_MIN[i] : every;
        }
        long grid = Duration.ofMinutes(every).toMillis();
        for (long at = Math.floorDiv(view.from_ms() + grid - 1, grid) * grid; at <= view.until_ms(); at += grid) {
            svg.line(x(at), BOTTOM, x(at), BOTTOM + 5, Svg.INK, 1, null);
            Instant then = Instant.ofEpochMilli(at);
            svg.text(
                    x(at),
                    BOTTOM + 19,
                    every >= 1440 ? formats.day(then.atZone(java.time.ZoneOffset.UTC)) : formats.time(then),
                    12,
                    "middle",
                    Svg.INK_2,
                    false);
        }
    }

    private void lines() {
        List<LogChartView.Line> named = new ArrayList<>();
        for (LogChartView.Line line : view.lines()) {
            StringBuilder path = new StringBuilder();
            for (LogChartView.Dot dot : line.dots()) {
                path.append(dot.joined() && path.length() > 0 ? 'L' : 'M')
                        .append(Svg.n(x(dot.time_ms())))
                        .append(' ')
                        .append(Svg.n(y(dot.degC())));
            }
            if (path.length() > 0) {
                named.add(line);
                switch (line.stroke()) {
                    case LOAD -> svg.path(path.toString(), "none", Svg.INK, 1.6);
                    case CONTROL -> svg.path(path.toString(), "none", Svg.BLUE, 1.2, Svg.DASHED);
                    case OVER_TEMPERATURE -> svg.path(path.toString(), "none", Svg.INK_2, 1.2, Svg.CHAIN);
                }
            }
        }
        // Names stand at the ends of their lines, pushed apart where two would meet.
        named.sort(Comparator.comparingDouble(line -> y(last(line).degC())));
        double below = TOP;
        for (LogChartView.Line line : named) {
            double at = Math.max(y(last(line).degC()) + 4, below);
            below = at + APART;
            svg.text(
                    RIGHT + 8,
                    at,
                    line.name(),
                    12,
                    "start",
                    line.stroke() == LogChartView.Stroke.CONTROL ? Svg.BLUE : Svg.INK,
                    false);
        }
    }

    private static LogChartView.Dot last(LogChartView.Line line) {
        return line.dots().get(line.dots().size() - 1);
    }

    private double x(long at_ms) {
        double share = (at_ms - view.from_ms()) / (double) Math.max(1, view.until_ms() - view.from_ms());
        return LEFT + Math.max(0, Math.min(1, share)) * (RIGHT - LEFT);
    }

    private double y(double degC) {
        return BOTTOM - (degC - least) / (most - least) * (BOTTOM - TOP);
    }
}
