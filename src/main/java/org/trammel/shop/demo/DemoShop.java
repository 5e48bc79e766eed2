package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.stations.Devices;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;

/** Names the shop, its stations and jigs. */
@Component
@Profile("demo")
class DemoShop {

    private final Settings settings;
    private final Stations stations;
    private final Devices devices;
    private final DemoActs acts;

    DemoShop(Settings settings, Stations stations, Devices devices, DemoActs acts) {
        this.settings = settings;
        this.stations = stations;
        this.devices = devices;
        this.acts = acts;
    }

    void setUp() {
        settings.change(acts.by("ME"), "shop.name", "Aldervik Frameworks", "the owner's word", "first set-up");
        settings.change(acts.by("ME"), "serial.prefix", "AV", "the owner's word", "first set-up");
        // With it the middle of the rear axle has the 0,060 that the shop tells of it.
        settings.change(acts.by("ME"), "table.post.u", "0.05", "own trial of the post, invented", "first set-up");
        station("1", "Saw & mitre", 3, 30, false);
        station("2", "Prep & clean", 2, 30, false);
        station("3", "Jig & weld", 3, 56, false);
        station("4", "Alignment table", 3, 28, false);
        station("5", "Heat treat", 6, 40, false);
        station("6", "Ream, face, bore", 2, 30, false);
        station("7", "Blast & pretreat", 3, 30, true);
        station("8", "Coat & cure", 4, 34, true);
        station("9", "Assembly, final check", 4, 36, false);
        jig("J1", "2026-02-02", "2026-05-02");
        jig("J2", "2025-12-08", "2026-03-08");
        jig("J3", "2026-02-02", "2026-05-02");
        DemoCast.TABLETS.forEach((name, at) -> devices.admit(acts.by("ME"), name, at));
    }

    private void station(String code, String name, int limit, int hours, boolean paper) {
        Station station = new Station(code, name, limit, BigDecimal.valueOf(hours), paper);
        if (stations.all().stream().anyMatch(s -> s.code().equals(code))) {
            stations.change(acts.by("ME"), station);
        } else {
            stations.add(acts.by("ME"), station);
        }
    }

    private void jig(String code, String checked, String due) {
        stations.addJig(acts.by("ME"), code, "3", LocalDate.parse(checked), LocalDate.parse(due));
    }
}
