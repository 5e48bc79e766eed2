package org.trammel.shop.bench;

import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.view.RedirectView;
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

/** The daily checks of the stations: which are due today, and the first tap that begins one. */
@Controller
class CheckPages {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuMMdd");
    private static final int LONGEST_NAME = 20;

    private final RouteBook routes;
    private final Travellers travellers;
    private final Release release;
    private final Settings settings;
    private final Formats formats;
    private final Clock clock;

    CheckPages(
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

    @GetMapping("/station/checks")
    String checks(SignedOn who, Model model) {
        model.addAttribute(
                "checks",
                routes.routes().stream()
                        .filter(r -> r.kind().equals(Kinds.STATION_CHECK) && r.releasedRevisionId() != null)
                        .map(r -> check(r, who))
                        .filter(Objects::nonNull)
                        .toList());
        return "bench/checks";
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
                travellers.heads(today(route.code())).stream().findFirst().orElse(null));
    }

    /** Name of today's check: the route and the day. */
    private String today(String routeCode) {
        LocalDate day = settings.dayOf(clock.instant());
        String dated = "-" + DAY.format(day);
        int room = LONGEST_NAME - dated.length();
        return routeCode.substring(0, Math.min(room, routeCode.length())) + dated;
    }

    @PostMapping("/station/checks")
    RedirectView begin(Act act, @RequestParam String route) {
        String name = today(route);
        release.releaseCheck(act, route, name);
        return Back.toFrame(name);
    }
}
