package org.trammel.shop.people;

import java.util.List;
import java.util.Locale;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.records.Act;
import org.trammel.shop.stations.Devices;

/** Admits tablets and withdraws them. The code to type at the tablet is on the answer itself, once. */
@Controller
class TabletPages {

    private final Devices devices;
    private final Signatures signatures;

    TabletPages(Devices devices, Signatures signatures) {
        this.devices = devices;
        this.signatures = signatures;
    }

    @PostMapping("/shop/tablets")
    String admit(
            Act act,
            SignedOn who,
            @RequestParam(defaultValue = "") String name,
            @RequestParam(name = "station", defaultValue = "") List<String> stations,
            @RequestParam(defaultValue = "") String secret,
            Model model) {
        signatures.confirm(who, secret);
        model.addAttribute("code", devices.admit(act, name.strip().toUpperCase(Locale.ROOT), stations));
        return "people/tablet-code";
    }

    @PostMapping("/shop/tablets/{id}/withdrawal")
    String withdraw(Act act, SignedOn who, @PathVariable long id, @RequestParam(defaultValue = "") String secret) {
        signatures.confirm(who, secret);
        devices.withdraw(act, id);
        return "redirect:/shop/stations";
    }
}
