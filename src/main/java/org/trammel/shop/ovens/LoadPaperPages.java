package org.trammel.shop.ovens;

import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.trammel.shop.people.Crew;

/** Paper of a load: the sheet that is signed at the oven, and the sheet on its door. */
@Controller
class LoadPaperPages {

    private final Runs runs;
    private final RunDoubts doubts;
    private final Crew crew;

    LoadPaperPages(Runs runs, RunDoubts doubts, Crew crew) {
        this.runs = runs;
        this.doubts = doubts;
        this.crew = crew;
    }

    @GetMapping("/loads/{code}/paper")
    String paper(@PathVariable String code, Model model) {
        Run run = runs.byCode(code);
        model.addAttribute("run", run);
        model.addAttribute("doubts", doubts.of(List.of(run.id())).getOrDefault(run.id(), List.of()));
        model.addAttribute("p", run.programme());
        model.addAttribute("names", crew.names());
        return "ovens/paper";
    }
}
