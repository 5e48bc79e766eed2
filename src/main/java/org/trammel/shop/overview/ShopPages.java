package org.trammel.shop.overview;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Backups;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.stations.Jig;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;
import org.trammel.shop.travellers.FrameSheet;

/** What stands at each station, and the list of what the shop keeps besides frames. */
@Controller
class ShopPages {

    private final ShopFacts.Reader reader;
    private final Stations stations;
    private final Backups backups;
    private final Settings settings;
    private final Clock clock;

    ShopPages(ShopFacts.Reader reader, Stations stations, Backups backups, Settings settings, Clock clock) {
        this.reader = reader;
        this.stations = stations;
        this.backups = backups;
        this.settings = settings;
        this.clock = clock;
    }

    /** A station with what stands at it. */
    public record At(Station station, List<Standing> standing, List<Jig> jigs) {

        /** Whether more stands there than should. */
        public boolean over() {
            return standing.size() > station.wipLimit();
        }
    }

    /**
     * A frame or part at a station.
     *
     * @param ahead holds of operations further on, in words
     */
    public record Standing(FrameSheet.Head head, String operation, String state, String kind, List<String> ahead) {}

    @GetMapping("/stations")
    String stations(SignedOn who, Model model) {
        ShopFacts facts = reader.read();
        Map<String, List<Standing>> at = facts.standing().stream()
                .filter(h -> h.currentStation() != null)
                .collect(Collectors.groupingBy(
                        h -> String.valueOf(h.currentStation()),
                        Collectors.mapping(h -> standing(h, facts), Collectors.toList())));
        Map<String, List<Jig>> jigs = stations.jigs().stream().collect(Collectors.groupingBy(Jig::stationCode));
        model.addAttribute(
                "stations",
                facts.stations().stream()
                        .map(s ->
                                new At(s, at.getOrDefault(s.code(), List.of()), jigs.getOrDefault(s.code(), List.of())))
                        .toList());
        model.addAttribute(
                "elsewhere",
                at.entrySet().stream()
                        .filter(e -> facts.stations().stream()
                                .noneMatch(s -> s.code().equals(e.getKey())))
                        .flatMap(e -> e.getValue().stream())
                        .toList());
        model.addAttribute("today", settings.today());
        model.addAttribute("keeps", who.person().isAny(Role.OWNER, Role.QA_LEAD));
        return "overview/stations";
    }

    private static Standing standing(FrameSheet.Head head, ShopFacts facts) {
        FrameSheet.OperationLine o = facts.at(head);
        String operation = o == null ? "" : o.code() + " " + o.name();
        List<String> ahead = facts.heldAhead(head);
        if (facts.brokenOff(head)) {
            return new Standing(head, operation, "stopped", "stopped", ahead);
        }
        if (facts.stopped(head)) {
            return new Standing(head, operation, "on hold", "stopped", ahead);
        }
        return o == null
                ? new Standing(head, operation, "waiting", "waiting", ahead)
                : switch (o.state()) {
                    case IN_WORK, AWAY ->
                        new Standing(head, operation, o.state().word(), "in-work", ahead);
                    case AT_POINT -> new Standing(head, operation, "to be signed", "hold", ahead);
                    default -> new Standing(head, operation, "waiting", "waiting", ahead);
                };
    }

    @GetMapping("/shop")
    String shop(SignedOn who, Model model) {
        Instant last = backups.last().map(Backups.Backup::at).orElse(null);
        model.addAttribute("backupAt", last);
        model.addAttribute(
                "backupOld",
                last == null
                        || last.isBefore(clock.instant().minus(Duration.ofHours(settings.whole("backup.warn.hours")))));
        model.addAttribute("log", who.person().isAny(Role.OWNER, Role.QA_LEAD, Role.AUDITOR));
        model.addAttribute("keeps", who.person().isAny(Role.OWNER, Role.QA_LEAD));
        return "overview/shop";
    }
}
