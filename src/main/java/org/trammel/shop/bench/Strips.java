package org.trammel.shop.bench;

import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Component;
import org.trammel.shop.routes.Point;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.web.Formats;
import org.trammel.shop.web.RouteView;

/** A frame's way through the stations: one length for each run of operations at a place, up to its hold point. */
@Component
class Strips {

    private final Formats formats;

    Strips(Formats formats) {
        this.formats = formats;
    }

    RouteView of(FrameSheet sheet) {
        List<RouteView.Stop> stops = new ArrayList<>();
        List<FrameSheet.OperationLine> run = new ArrayList<>();
        for (FrameSheet.OperationLine operation : sheet.operations()) {
            if (operation.state() == OperationState.REPEATED) {
                continue;
            }
            if (!run.isEmpty() && !run.get(0).station().equals(operation.station())) {
                stops.add(stop(run));
                run.clear();
            }
            run.add(operation);
            if (operation.point() == Point.HOLD) {
                stops.add(stop(run));
                run.clear();
            }
        }
        if (!run.isEmpty()) {
            stops.add(stop(run));
        }
        return new RouteView(marked(stops, sheet));
    }

    private RouteView.Stop stop(List<FrameSheet.OperationLine> run) {
        FrameSheet.OperationLine last = run.get(run.size() - 1);
        long done = run.stream().filter(o -> o.state() == OperationState.DONE).count();
        boolean stopped = run.stream().anyMatch(o -> o.state() == OperationState.STOPPED);
        boolean begun =
                run.stream().anyMatch(o -> o.state() != OperationState.WAITING && o.state() != OperationState.DONE);
        RouteView.Progress progress = done == run.size()
                ? RouteView.Progress.DONE
                : stopped
                        ? RouteView.Progress.STOPPED
                        : begun || done > 0 ? RouteView.Progress.IN_WORK : RouteView.Progress.TO_COME;
        String station = last.station();
        return new RouteView.Stop(
                station.isEmpty() ? last.name() : formats.station(station),
                progress,
                (done + 0.5) / run.size(),
                last.point() == Point.HOLD ? last.name() : null,
                last.point() == Point.HOLD && last.state() == OperationState.DONE);
    }

    /** The place at hand is drawn as in work even while its first operation waits: it is where the frame stands. */
    private static List<RouteView.Stop> marked(List<RouteView.Stop> stops, FrameSheet sheet) {
        boolean shown = stops.stream()
                .anyMatch(
                        s -> s.progress() == RouteView.Progress.IN_WORK || s.progress() == RouteView.Progress.STOPPED);
        if (shown || sheet.at() == null) {
            return stops;
        }
        List<RouteView.Stop> marked = new ArrayList<>(stops);
        for (int i = 0; i < marked.size(); i++) {
            RouteView.Stop stop = marked.get(i);
            if (stop.progress() == RouteView.Progress.TO_COME) {
                marked.set(
                        i,
                        new RouteView.Stop(stop.name(), RouteView.Progress.IN_WORK, 0, stop.hold(), stop.released()));
                return marked;
            }
        }
        return marked;
    }
}
