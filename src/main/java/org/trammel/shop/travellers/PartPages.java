package org.trammel.shop.travellers;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.records.Act;

/** Makes a scrapped part of a frame anew, from the frame's story. */
@Controller
class PartPages {

    private final Rework rework;

    PartPages(Rework rework) {
        this.rework = rework;
    }

    @PostMapping("/frames/{serial}/anew")
    String anew(Act act, @PathVariable String serial, @RequestParam long traveller) {
        rework.makeAnew(act, traveller);
        return "redirect:/frames/" + serial;
    }
}
