package org.trammel.shop.bench;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.FrameSheet;

/** Paper that travels with a frame: its traveller, its tag, the numbers of its jig, the tag that is tied on while it is held. */
@Controller
@RequestMapping("/frames/{tag}")
class PaperPages {

    private final Tags tags;
    private final Papers papers;
    private final JigSheets jigs;

    PaperPages(Tags tags, Papers papers, JigSheets jigs) {
        this.tags = tags;
        this.papers = papers;
        this.jigs = jigs;
    }

    @GetMapping("/traveller")
    String traveller(@PathVariable String tag, Model model) {
        model.addAttribute("paper", papers.of(tags.sheet(tag)));
        return "bench/traveller";
    }

    @GetMapping("/jig-sheet")
    String jig(@PathVariable String tag, Model model) {
        model.addAttribute("jig", jigs.of(tags.sheet(tag)));
        return "bench/jig";
    }

    @GetMapping("/tag")
    String tag(@PathVariable String tag, Model model) {
        FrameSheet sheet = tags.sheet(tag);
        model.addAttribute("head", sheet.head());
        model.addAttribute("code", Papers.code(sheet.head()));
        return "bench/tag";
    }

    @GetMapping("/hold-tag")
    String holdTag(@PathVariable String tag, Model model) {
        FrameSheet sheet = tags.sheet(tag);
        if (sheet.holds().isEmpty()) {
            throw Refusal.state(
                    "No hold tag is printed for " + sheet.head().mark() + ".",
                    "No hold is open on it.",
                    "Place the hold first, from the sheet of the frame.");
        }
        model.addAttribute("head", sheet.head());
        model.addAttribute("code", Papers.code(sheet.head()));
        model.addAttribute("holds", sheet.holds());
        model.addAttribute("at", sheet.at());
        return "bench/hold-tag";
    }
}
