package org.trammel.shop.bench;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.view.RedirectView;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;

/** The daily checks of the stations: which are due today, and the first tap that begins one. */
@Controller
class CheckPages {

    private final StationChecks checks;

    CheckPages(StationChecks checks) {
        this.checks = checks;
    }

    @GetMapping("/station/checks")
    String today(SignedOn who, Model model) {
        model.addAttribute("checks", checks.today(who));
        return "bench/checks";
    }

    @PostMapping("/station/checks")
    RedirectView begin(Act act, @RequestParam String route) {
        return Back.toFrame(checks.begin(act, route));
    }
}
