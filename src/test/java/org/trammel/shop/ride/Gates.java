package org.trammel.shop.ride;

import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.trammel.shop.routes.ChildSheet;
import org.trammel.shop.routes.ClockKind;
import org.trammel.shop.routes.ClockSheet;
import org.trammel.shop.routes.OperationSheet;
import org.trammel.shop.routes.Point;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.routes.StepSheet;

/** The gates a route has, its parts' included: what must have been tried. */
record Gates(Set<String> readings, Set<String> points, Set<String> windows, Set<String> joins, Set<String> proofs) {

    static Gates of(RouteSheet route) {
        Gates gates = new Gates(new TreeSet<>(), new TreeSet<>(), new TreeSet<>(), new TreeSet<>(), new TreeSet<>());
        gates.add("", route);
        return gates;
    }

    private void add(String part, RouteSheet route) {
        where(part, route, o -> !o.characteristics().isEmpty(), readings);
        where(part, route, o -> o.point() != Point.NONE, points);
        where(part, route, OperationSheet::joins, joins);
        route.operations()
                .forEach(o -> o.steps().stream()
                        .map(StepSheet::proof)
                        .filter(proof -> proof != null && !Elsewhere.proves(proof))
                        .forEach(proof -> proofs.add(part + o.code() + " " + proof)));
        for (ClockSheet clock : route.clocks()) {
            if (clock.kind() == ClockKind.WINDOW && !clock.gates().isEmpty()) {
                windows.add(part + clock.code());
            }
        }
        for (ChildSheet child : route.children()) {
            add(child.part() + " ", child.route());
        }
    }

    private static void where(String part, RouteSheet route, Predicate<OperationSheet> which, Set<String> into) {
        route.operations().stream().filter(which).forEach(o -> into.add(part + o.code()));
    }
}
