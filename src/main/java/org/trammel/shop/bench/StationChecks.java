package org.trammel.shop.bench;

import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.routes.Kinds;
import org.trammel.shop.routes.OperationSheet;
import org.trammel.shop.routes.RouteBook;
import org.trammel.shop.routes.RouteSummary;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Release;
import org.trammel.shop.travellers.Travellers;
import org.trammel.shop.web.Formats;

/** The daily checks of the stations: one traveller for each route and day. */
@Component
class StationChecks {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuMMdd");
    private static final int LONGEST_NAME = 20;

    private final RouteBook routes;
    private final Travellers travellers;
    private final Release release;
    private final Settings settings;
    private final Formats formats;
    private final Clock clock;

    StationChecks(
            RouteBook routes, Travellers travellers, Release release, Settings settings, Formats formats, Clock clock) {
        this.routes = routes;
        this.travellers = travellers;
        this.release = release;
        this.settings = settings;
        this.formats = formats;
        this.clock = clock;
    }

    /**
     * A check of today.
     *
     * @param begun its traveller; null if it was not begun today
     */
    record Check(String routeCode, String name, String station, FrameSheet.@Nullable Head begun) {}

    /** Today's checks; at a tablet those of its own stations. */
    List<Check> today(SignedOn who) {
        return routes.routes().stream()
                .filter(route -> route.kind().equals(Kinds.STATION_CHECK) && route.releasedRevisionId() != null)
                .map(route -> check(route, who))
                .filter(Objects::nonNull)
                .toList();
    }

    private @Nullable Check check(RouteSummary route, SignedOn who) {
        List<OperationSheet> operations = routes.released(route.code()).operations();
        String station = operations.isEmpty() ? "" : operations.get(0).station();
        if (who.tablet() && !who.stations().contains(station)) {
            return null;
        }
        return new Check(
                route.code(),
                route.name(),
                formats.station(station),
                travellers.heads(nameOf(route.code())).stream().findFirst().orElse(null));
    }

    /** Begins today's check of a route; gives its name. */
    String begin(Act act, String routeCode) {
        String name = nameOf(routeCode);
        release.releaseCheck(act, routeCode, name);
        return name;
    }

    /** Name of today's check: the route and the day. */
    private String nameOf(String routeCode) {
        LocalDate day = settings.dayOf(clock.instant());
        String dated = "-" + DAY.format(day);
        int room = LONGEST_NAME - dated.length();
        return routeCode.substring(0, Math.min(room, routeCode.length())) + dated;
    }
}
