package org.trammel.shop.stations;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

/** The stations of the shop with their limits, hours, jigs and tablets. */
@Controller
@RequestMapping("/shop/stations")
class StationPages {

    private final Stations stations;
    private final Devices devices;
    private final Settings settings;
    private final ObjectProvider<StationsNamed> named;

    StationPages(Stations stations, Devices devices, Settings settings, ObjectProvider<StationsNamed> named) {
        this.named = named;
        this.stations = stations;
        this.devices = devices;
        this.settings = settings;
    }

    @GetMapping
    String list(Model model) {
        model.addAttribute("stations", stations.all());
        model.addAttribute("named", missing());
        model.addAttribute("jigs", stations.jigs());
        model.addAttribute("tablets", devices.tablets());
        model.addAttribute("today", settings.today());
        return "stations/list";
    }

    /** What routes want done at codes no station has yet. */
    private Map<String, List<String>> missing() {
        Map<String, List<String>> missing = new TreeMap<>();
        named.forEach(one -> missing.putAll(one.named()));
        stations.all().forEach(station -> missing.remove(station.code()));
        return missing;
    }

    @PostMapping
    String add(
            Act act,
            @RequestParam(defaultValue = "") String code,
            @RequestParam(defaultValue = "") String name,
            @RequestParam(defaultValue = "") String wipLimit,
            @RequestParam(defaultValue = "") String hours,
            @RequestParam(defaultValue = "false") boolean paperOnly) {
        stations.add(act, station(code.strip().toUpperCase(Locale.ROOT), name, wipLimit, hours, paperOnly));
        return "redirect:/shop/stations";
    }

    @PostMapping("/{code}")
    String change(
            Act act,
            @PathVariable String code,
            @RequestParam(defaultValue = "") String name,
            @RequestParam(defaultValue = "") String wipLimit,
            @RequestParam(defaultValue = "") String hours,
            @RequestParam(defaultValue = "false") boolean paperOnly) {
        stations.change(act, station(code, name, wipLimit, hours, paperOnly));
        return "redirect:/shop/stations";
    }

    @PostMapping("/{code}/jigs")
    String addJig(
            Act act,
            @PathVariable String code,
            @RequestParam(defaultValue = "") String jig,
            @RequestParam LocalDate checkedOn,
            @RequestParam LocalDate dueOn) {
        stations.addJig(act, jig.strip().toUpperCase(Locale.ROOT), code, checkedOn, dueOn);
        return "redirect:/shop/stations";
    }

    @PostMapping("/jigs/{code}/check")
    String check(Act act, @PathVariable String code, @RequestParam LocalDate checkedOn, @RequestParam LocalDate dueOn) {
        stations.checkJig(act, code, checkedOn, dueOn);
        return "redirect:/shop/stations";
    }

    @PostMapping("/jigs/{code}/stop")
    String stop(Act act, @PathVariable String code) {
        stations.stopJig(act, code);
        return "redirect:/shop/stations";
    }

    @PostMapping("/jigs/{code}/free")
    String free(Act act, @PathVariable String code) {
        stations.freeJig(act, code);
        return "redirect:/shop/stations";
    }

    private static Station station(String code, String name, String wipLimit, String hours, boolean paperOnly) {
        String deed = "The station was not kept.";
        if (!wipLimit.strip().matches("\\d{1,4}")) {
            throw Refusal.input("wipLimit", deed, "The limit is a whole number of frames.", "Enter it such as 3.");
        }
        String plain = hours.strip().replace(',', '.');
        if (!plain.matches("\\d{1,3}(\\.\\d)?")) {
            throw Refusal.input(
                    "hours",
                    deed,
                    "The hours are a figure with at most one decimal.",
                    "Enter them such as 30 or 37,5.");
        }
        return new Station(code, name.strip(), Integer.parseInt(wipLimit.strip()), new BigDecimal(plain), paperOnly);
    }
}
