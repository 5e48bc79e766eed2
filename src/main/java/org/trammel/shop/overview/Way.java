package org.trammel.shop.overview;

import java.util.ArrayList;
import java.util.List;
import org.trammel.shop.routes.Point;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.web.RouteView;

/** A traveller's way through the stations as a strip: a length for each run of operations up to a hold point. */
final class Way {

    private final Places places;

    Way(Places places) {
        this.places = places;
    }

    RouteView of(List<FrameSheet.OperationLine> operations, boolean stopped) {
        List<RouteView.Stop> stops = new ArrayList<>();
        List<FrameSheet.OperationLine> run = new ArrayList<>();
        boolean shown = false;
        for (FrameSheet.OperationLine o : operations) {
            if (o.state() == OperationState.REPEATED) {
                continue;
            }
            if (!run.isEmpty() && !run.get(0).station().equals(o.station())) {
                shown |= add(stops, run, shown, stopped);
            }
            run.add(o);
            if (o.point() == Point.HOLD) {
                shown |= add(stops, run, shown, stopped);
            }
        }
        if (!run.isEmpty()) {
            add(stops, run, shown, stopped);
        }
        return new RouteView(stops);
    }

    /** Adds a stop and says whether it is where the frame stands: the first one with something left to do. */
    private boolean add(
            List<RouteView.Stop> stops, List<FrameSheet.OperationLine> run, boolean shown, boolean stopped) {
        FrameSheet.OperationLine last = run.get(run.size() - 1);
        long done = run.stream().filter(o -> o.state() == OperationState.DONE).count();
        boolean all = done == run.size();
        boolean here = !all && !shown;
        RouteView.Progress progress = all
                ? RouteView.Progress.DONE
                : !here
                        ? RouteView.Progress.TO_COME
                        : stopped ? RouteView.Progress.STOPPED : RouteView.Progress.IN_WORK;
        boolean hold = last.point() == Point.HOLD;
        stops.add(new RouteView.Stop(
                last.station().isEmpty() ? last.name() : places.name(last.station()),
                progress,
                (done + 0.5) / run.size(),
                hold ? last.name() : null,
                hold && last.state() == OperationState.DONE));
        run.clear();
        return here;
    }
}
