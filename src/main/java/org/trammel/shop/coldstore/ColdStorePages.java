package org.trammel.shop.coldstore;

import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.web.Keyed;

/** The page of the cold store. */
@Controller
@RequestMapping("/cold-store")
class ColdStorePages {

    private final ColdStore store;
    private final Crew crew;
    private final Settings settings;

    ColdStorePages(ColdStore store, Crew crew, Settings settings) {
        this.store = store;
        this.crew = crew;
        this.settings = settings;
    }

    @GetMapping
    String page(@RequestParam(defaultValue = "") String frame, SignedOn who, Model model) {
        model.addAttribute("lying", store.lying());
        model.addAttribute("frame", frame);
        model.addAttribute("moves", frame.isBlank() ? store.moves() : store.of(frame));
        model.addAttribute("names", crew.names());
        model.addAttribute("gauges", store.usable());
        model.addAttribute("most_degC", settings.number("cold.store"));
        model.addAttribute("source", settings.inForce("cold.store").source());
        model.addAttribute("works", who.person().mayWork());
        return "coldstore/frames";
    }

    @PostMapping("/in")
    String putIn(Act act, @RequestParam Map<String, String> fields) {
        store.putIn(
                act,
                fields.getOrDefault("tag", ""),
                Keyed.figureOrNone("degC", "The frame was not put into the cold store.", fields.get("degC")),
                fields.get("gauge"));
        return "redirect:/cold-store";
    }

    @PostMapping("/out")
    String takeOut(Act act, @RequestParam Map<String, String> fields) {
        store.takeOut(
                act,
                fields.getOrDefault("tag", ""),
                Keyed.figureOrNone("degC", "The frame was not taken out of the cold store.", fields.get("degC")),
                fields.get("gauge"));
        return "redirect:/cold-store";
    }
}
