package org.trammel.shop.overview;

import java.time.Clock;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.web.Formats;

/** The first sheet of each, and the run of the shop. */
@Controller
class RunPages {

    private static final int EXPLAINED = 3;

    private final RunOfTheShop run;
    private final Settings settings;
    private final Formats formats;
    private final Clock clock;

    RunPages(RunOfTheShop run, Settings settings, Formats formats, Clock clock) {
        this.run = run;
        this.settings = settings;
        this.formats = formats;
        this.clock = clock;
    }

    /** A tablet opens its list, the QA lead the desk, everybody else at a desk the run of the shop. */
    @GetMapping("/")
    String home(SignedOn who) {
        if (who.tablet()) {
            return "redirect:/station";
        }
        boolean owner = who.person().is(Role.OWNER);
        return who.person().is(Role.QA_LEAD) && !owner ? "redirect:/qa" : "redirect:/run";
    }

    @GetMapping("/run")
    String run(@RequestParam(defaultValue = "false") boolean pressing, Model model) {
        Run now = run.now();
        Axis axis = Axis.of(now.lines(), clock.instant(), settings.zone());
        List<RunLine> shown = pressing
                ? now.lines().stream().filter(l -> l.late() || l.held()).toList()
                : now.lines();
        model.addAttribute("run", now);
        model.addAttribute("lines", shown);
        model.addAttribute("axis", axis);
        model.addAttribute("moment", formats.day(clock.instant()) + ", " + formats.time(clock.instant()));
        model.addAttribute("pressing", pressing);
        List<RunLine> late = now.late();
        model.addAttribute("late", late.subList(0, Math.min(EXPLAINED, late.size())));
        return "overview/run";
    }
}
