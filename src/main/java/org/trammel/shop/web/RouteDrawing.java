package org.trammel.shop.web;

import java.util.List;

/** The route strip: done wide, in work filled, to come dashed, hold points as diamonds. Two places are named only. */
final class RouteDrawing {

    private static final double WIDTH = 698;
    private static final double HEIGHT = 58;
    private static final double AXIS = 15;
    private static final double FIGURES = 17;

    private RouteDrawing() {}

    static String of(RouteView route) {
        List<RouteView.Stop> stops = route.stops();
        int now = now(stops);
        int next = nextHold(stops);
        Svg svg = Svg.labelled("route", WIDTH, HEIGHT, finding(stops, now, next));
        for (int i = 0; i < stops.size(); i++) {
            length(svg, stops.get(i), x(i, stops.size()), x(i + 1, stops.size()));
        }
        svg.line(WIDTH - 4, AXIS - 9, WIDTH - 4, AXIS + 9, Svg.INK, 2, null);
        for (int i = 0; i < stops.size(); i++) {
            if (stops.get(i).hold() != null) {
                diamond(svg, x(i + 1, stops.size()) - 14, stops.get(i).released());
            }
        }
        words(svg, stops, now, next);
        return svg.done();
    }

    private static void length(Svg svg, RouteView.Stop stop, double from, double to) {
        boolean done = stop.progress() == RouteView.Progress.DONE;
        svg.line(from, AXIS, to, AXIS, Svg.INK, done ? 4 : 1, done ? null : Svg.DASHED);
        if (stop.progress() == RouteView.Progress.IN_WORK) {
            double part = Math.max(0.08, Math.min(1, stop.done()));
            svg.path(
                    "M" + Svg.n(from) + " " + Svg.n(AXIS - 7) + "h" + Svg.n((to - from) * part) + "v14h"
                            + Svg.n(-(to - from) * part) + "z",
                    Svg.PLATE,
                    Svg.PLATE_EDGE,
                    1);
        }
        if (stop.progress() == RouteView.Progress.STOPPED) {
            double at = from + (to - from) * 0.4;
            svg.line(from, AXIS, at - 4, AXIS, "var(--red)", 4, null);
            svg.line(at - 5, AXIS + 9, at, AXIS - 9, "var(--red)", 2.2, null);
            svg.line(at + 2, AXIS + 9, at + 7, AXIS - 9, "var(--red)", 2.2, null);
        }
        svg.line(from, AXIS - 9, from, AXIS + 9, Svg.INK, 2, null);
    }

    private static void diamond(Svg svg, double at, boolean released) {
        svg.path(
                "M" + Svg.n(at) + " " + Svg.n(AXIS - 7) + "l7 7-7 7-7-7z",
                released ? Svg.INK : Svg.SHEET,
                released ? Svg.INK : Svg.BLUE,
                2);
    }

    private static void words(Svg svg, List<RouteView.Stop> stops, int now, int next) {
        double baseline = HEIGHT - 8;
        double begin = 0;
        double end = 0;
        if (now >= 0) {
            String name = stops.get(now).name();
            double width = Svg.wide(name, FIGURES);
            double at = Math.min(x(now, stops.size()) + 2, WIDTH - 4 - width);
            String colour = stops.get(now).progress() == RouteView.Progress.STOPPED ? "var(--red)" : Svg.BLUE;
            svg.text(at, baseline, name, FIGURES, "start", colour, true);
            begin = at;
            end = at + width;
        }
        if (next < 0) {
            return;
        }
        double hold = x(next + 1, stops.size()) - 14;
        String words = "next hold point: " + stops.get(next).hold();
        double width = Svg.wide(words, FIGURES);
        svg.line(hold, AXIS + 9, hold, HEIGHT - 22, Svg.BLUE, 1, null);
        double wanted = Math.max(hold - 4, end + 12);
        if (wanted + width <= WIDTH) {
            svg.aside(wanted, baseline, words, FIGURES, "start");
        } else if (WIDTH - 4 - width > end) {
            svg.aside(WIDTH - 4, baseline, words, FIGURES, "end");
        } else if (now >= 0 && begin - width > 12) {
            svg.aside(begin - 12, baseline, words, FIGURES, "end");
        }
    }

    private static String finding(List<RouteView.Stop> stops, int now, int next) {
        boolean stopped = now >= 0 && stops.get(now).progress() == RouteView.Progress.STOPPED;
        String place = now < 0 ? "Route: nothing in work" : "Route: " + (stopped ? "stopped" : "now") + " at ";
        return place
                + (now < 0 ? "" : stops.get(now).name())
                + (next < 0 ? "" : "; next hold point: " + stops.get(next).hold());
    }

    private static int now(List<RouteView.Stop> stops) {
        for (int i = 0; i < stops.size(); i++) {
            if (stops.get(i).progress() == RouteView.Progress.IN_WORK
                    || stops.get(i).progress() == RouteView.Progress.STOPPED) {
                return i;
            }
        }
        return -1;
    }

    private static int nextHold(List<RouteView.Stop> stops) {
        for (int i = 0; i < stops.size(); i++) {
            if (stops.get(i).hold() != null && !stops.get(i).released()) {
                return i;
            }
        }
        return -1;
    }

    private static double x(int stop, int stops) {
        return 4 + stop * (WIDTH - 8) / Math.max(1, stops);
    }
}
