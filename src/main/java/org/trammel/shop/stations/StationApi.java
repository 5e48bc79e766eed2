package org.trammel.shop.stations;

import java.time.LocalDate;
import java.util.List;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.records.Act;

/** Stations, jigs and tablets for programs. */
@RestController
@RequestMapping("/api/v1/stations")
class StationApi {

    private final Stations stations;

    StationApi(Stations stations) {
        this.stations = stations;
    }

    record NewJig(String code, LocalDate checkedOn, LocalDate dueOn) {}

    record Check(LocalDate checkedOn, LocalDate dueOn) {}

    @GetMapping
    List<Station> all() {
        return stations.all();
    }

    @GetMapping("/jigs")
    List<Jig> jigs() {
        return stations.jigs();
    }

    @PostMapping
    Station add(Act act, @RequestBody Station station) {
        return stations.add(act, station);
    }

    @PutMapping("/{code}")
    Station change(Act act, @PathVariable String code, @RequestBody Station station) {
        return stations.change(
                act,
                new Station(
                        code,
                        station.name(),
                        station.wipLimit(),
                        station.productiveHoursPerWeek(),
                        station.paperOnly()));
    }

    @PostMapping("/{code}/jigs")
    Jig addJig(Act act, @PathVariable String code, @RequestBody NewJig jig) {
        return stations.addJig(act, jig.code(), code, jig.checkedOn(), jig.dueOn());
    }

    @PostMapping("/jigs/{code}/check")
    Jig check(Act act, @PathVariable String code, @RequestBody Check check) {
        return stations.checkJig(act, code, check.checkedOn(), check.dueOn());
    }

    @PostMapping("/jigs/{code}/stop")
    Jig stop(Act act, @PathVariable String code) {
        return stations.stopJig(act, code);
    }

    @PostMapping("/jigs/{code}/free")
    Jig free(Act act, @PathVariable String code) {
        return stations.freeJig(act, code);
    }
}
